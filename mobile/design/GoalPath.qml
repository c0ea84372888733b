pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Where a goal stands and what comes next, in words, joined by a running stitch.
Item {
    id: path

    property string nowTitle: ""
    property string nowText: ""
    property string nextTitle: ""
    property string nextText: ""
    readonly property int dot: 14
    readonly property int markRoom: 30

    width: parent ? parent.width : implicitWidth
    implicitWidth: now.implicitWidth + path.markRoom
    implicitHeight: next.y + next.height

    Rectangle {
        id: nowMark

        anchors.left: parent.left
        anchors.leftMargin: 3
        y: 4
        width: path.dot
        height: path.dot
        radius: path.dot / 2
        antialiasing: true
        color: Theme.accent
    }

    StitchLine {
        anchors.horizontalCenter: nowMark.horizontalCenter
        y: nowMark.y + path.dot + 3
        width: 4
        height: nextMark.y - y - 3
        thickness: 3.6
        on: 10
        off: 4
        colour: Theme.accent
    }

    Rectangle {
        id: nextMark

        anchors.horizontalCenter: nowMark.horizontalCenter
        y: next.y + nowMark.y
        width: path.dot
        height: path.dot
        radius: path.dot / 2
        antialiasing: true
        color: "transparent"
        border.width: 3
        border.color: Theme.accent
    }

    GoalWords {
        id: now

        anchors.left: parent.left
        anchors.leftMargin: path.markRoom
        anchors.right: parent.right
        lead: path.nowTitle
        text: path.nowText
    }

    GoalWords {
        id: next

        anchors.left: now.left
        anchors.right: parent.right
        y: now.height + Theme.cardPadding + 4
        lead: path.nextTitle
        text: path.nextText
    }
}
