pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The open box seen from above: rim, card, and (where things are put back) its lining.
Item {
    id: tray

    default property alias contents: column.data
    property alias spacing: column.spacing
    property bool lined: false
    readonly property int cardWidth: tray.lined ? 6 : 10
    readonly property int inset: rim.border.width + tray.cardWidth + (tray.lined ? 8 : 0)

    width: parent ? parent.width : implicitWidth
    implicitWidth: column.implicitWidth + 2 * tray.inset
    implicitHeight: column.implicitHeight + 2 * tray.inset

    Rectangle {
        id: rim

        anchors.fill: parent
        radius: Theme.radiusTray
        color: Theme.card
        border.width: 3
        border.color: Theme.ink
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: rim.border.width + tray.cardWidth
        radius: Theme.radiusPaper
        visible: tray.lined
        color: Theme.lining
        border.width: 2
        border.color: Theme.ink
    }

    Column {
        id: column

        x: tray.inset
        y: tray.inset
        width: tray.width - 2 * tray.inset
        spacing: 6
    }
}
