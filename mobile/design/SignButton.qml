pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A sign that is pressed. It has no words of its own, so `accessibleName` must say what it does.
/// `otherWaySign` takes its place where words run from right to left.
Pressable {
    id: button

    property string sign: ""
    property string otherWaySign: ""
    property bool marked: false

    background: Rectangle {
        radius: Theme.radiusPaper
        color: button.hovered && button.ground === Theme.OnSheet ? Theme.card : "transparent"
        border.width: button.down || button.marked ? 2 : 0
        border.color: button.groundInk
    }

    contentItem: Item {
        implicitWidth: Theme.signSize
        implicitHeight: Theme.signSize

        Drawing {
            anchors.centerIn: parent
            width: Theme.signSize
            height: Theme.signSize
            name: button.mirrored && button.otherWaySign.length > 0 ? button.otherWaySign : button.sign
            inkColour: button.groundInk
        }
    }
}
