pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Round a group that a switch has lit; with a word on it where it leads out of the group. Seen on
/// paper, cloth and caution alike: ink between two edges of paper.
Item {
    id: ring

    required property rect area
    required property bool leaving

    x: ring.area.x
    y: ring.area.y
    width: ring.area.width
    height: ring.area.height
    visible: ring.width > 0

    Rectangle {
        anchors.fill: parent
        anchors.margins: -2
        color: "transparent"
        radius: Theme.radiusPaper + 2
        border.width: 7
        border.color: Theme.sheet
    }

    Rectangle {
        anchors.fill: parent
        color: "transparent"
        radius: Theme.radiusPaper
        border.width: 3
        border.color: Theme.ink
    }

    Rectangle {
        anchors.centerIn: parent
        visible: ring.leaving
        width: words.width + 2 * Theme.margin
        height: words.height + 2 * Theme.gap
        radius: Theme.radiusPaper
        color: Theme.sheet
        border.width: 3
        border.color: Theme.ink

        Words {
            id: words

            anchors.centerIn: parent
            role: Theme.Label
            strong: true
            spoken: false
            text: qsTr("Out of here")
        }
    }
}
