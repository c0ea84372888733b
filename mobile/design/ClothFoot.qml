pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The strip of the place's cloth at the foot of a screen. What one presses to go on lies on it.
Item {
    id: foot

    default property alias contents: column.data
    property int place: Theme.place
    property int topSpace: Theme.lowPage ? 16 : Theme.largeText ? 22 : 28
    property int bottomSpace: Theme.largeText || Theme.lowPage ? 6 : 18
    property int sideSpace: Theme.largeText ? Theme.childMargin : Theme.margin
    property alias spacing: column.spacing
    readonly property int toothHeight: 5

    width: parent ? parent.width : implicitWidth
    implicitWidth: column.implicitWidth + 2 * foot.sideSpace
    implicitHeight: column.implicitHeight + foot.topSpace + foot.bottomSpace

    ClothStrip {
        anchors.fill: parent
        place: foot.place
        colour: foot.place === Theme.place ? Theme.cloth : Theme.clothOf(foot.place, Theme.scheme)
        weave: Theme.weave
        stitch: Theme.stitch
    }

    // The cloth is not a hole: a touch beside a button must not reach the page below.
    MouseArea {
        anchors.fill: parent
        anchors.topMargin: foot.toothHeight
    }

    Column {
        id: column

        x: foot.sideSpace
        y: foot.topSpace
        width: foot.width - 2 * foot.sideSpace
        spacing: Theme.smallGap
    }
}
