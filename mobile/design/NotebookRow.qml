pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One play in the notebook: what was played, what was noticed, by whom and whether all came back.
Item {
    id: row

    property string drawing: ""
    property string name: ""
    property string noticed: ""
    property string note: ""
    property bool ruled: true
    readonly property int room: Theme.itemSmall + Theme.margin

    width: parent ? parent.width : implicitWidth
    implicitWidth: words.implicitWidth + row.room
    implicitHeight: Math.max(Theme.itemSmall, words.height) + 2 * Theme.cardPadding

    Rectangle {
        anchors.fill: picture
        visible: Theme.scheme === Theme.Dark
        radius: Theme.radiusPaper
        color: Theme.picture
    }

    Drawing {
        id: picture

        anchors.left: parent.left
        anchors.leftMargin: Theme.smallGap
        y: Theme.cardPadding
        width: Theme.itemSmall
        height: Theme.itemSmall
        name: row.drawing
        middleOnly: true
    }

    Column {
        id: words

        anchors.left: parent.left
        anchors.leftMargin: row.room + 2
        anchors.right: parent.right
        y: Theme.cardPadding - 2
        spacing: 4

        Words {
            width: parent.width
            role: Theme.Label
            text: row.name
        }

        Words {
            width: parent.width
            visible: text.length > 0
            text: row.noticed
        }

        Words {
            width: parent.width
            role: Theme.Caption
            soft: true
            visible: text.length > 0
            text: row.note
        }
    }

    Rule {
        anchors.left: words.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        visible: row.ruled
    }
}
