pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The drawing of one thing, large enough for a phone that leans on a pile of boxes.
Item {
    id: thing

    property string drawing: ""

    implicitWidth: Theme.itemLarge
    implicitHeight: Theme.itemLarge

    Rectangle {
        anchors.fill: parent
        visible: Theme.scheme === Theme.Dark
        radius: Theme.radiusPaper
        color: Theme.picture
    }

    Drawing {
        anchors.fill: parent
        name: thing.drawing
    }
}
