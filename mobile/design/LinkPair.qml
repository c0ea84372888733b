pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Two quieter actions, one at each end of a line; one over the other when there is no room. One
/// without words is not there.
Item {
    id: pair

    property string text: ""
    property string otherText: ""
    property string accessibleName: pair.text
    property string otherAccessibleName: pair.otherText
    readonly property bool fits: first.implicitWidth + second.implicitWidth + Theme.sectionGap <= pair.width

    signal clicked()
    signal otherClicked()

    width: parent ? parent.width : implicitWidth
    implicitWidth: first.implicitWidth + second.implicitWidth + Theme.sectionGap
    implicitHeight: pair.fits ? first.implicitHeight : first.implicitHeight + second.implicitHeight

    StitchedLink {
        id: first

        anchors.left: parent.left
        width: Math.min(implicitWidth, pair.width)
        visible: pair.text.length > 0
        text: pair.text
        accessibleName: pair.accessibleName
        onClicked: pair.clicked()
    }

    StitchedLink {
        id: second

        x: pair.fits !== pair.LayoutMirroring.enabled ? pair.width - width : 0
        anchors.bottom: parent.bottom
        width: Math.min(implicitWidth, pair.width)
        visible: pair.otherText.length > 0
        text: pair.otherText
        accessibleName: pair.otherAccessibleName
        onClicked: pair.otherClicked()
    }
}
