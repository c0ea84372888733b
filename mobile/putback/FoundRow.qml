pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One item that is missing: its picture, how many, and how many of them turned up. Few are keys,
/// many a stepper; a single one, or a balloon with all its pieces, is found or not.
Card {
    id: row

    property string drawing: ""
    property string name: ""
    property string note: ""
    property int missing: 1
    property int found: 0
    property bool whole: false
    property string wholeText: ""
    readonly property int fewAtMost: 6

    signal named(int pieces)

    spacing: Theme.chipGap

    Item {
        width: parent.width
        implicitHeight: Math.max(picture.height, names.height)

        Rectangle {
            anchors.fill: picture
            visible: Theme.scheme === Theme.Dark
            radius: Theme.radiusPaper
            color: Theme.picture
        }

        Drawing {
            id: picture

            anchors.left: parent.left
            width: Theme.itemSmall
            height: Theme.itemSmall
            name: row.drawing
        }

        Column {
            id: names

            anchors.left: picture.right
            anchors.leftMargin: Theme.cardPadding
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.smallGap

            Words {
                width: parent.width
                role: Theme.Row
                text: row.name
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: row.note
            }
        }
    }

    FilterChip {
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        visible: row.whole
        picked: row.found > 0
        accessibleName: row.name + ": " + row.wholeText
        text: row.wholeText
        onClicked: row.named(row.missing)
    }

    Words {
        width: parent.width
        visible: !row.whole
        text: qsTr("How many are found?")
    }

    Flow {
        width: parent.width
        spacing: Theme.cardPadding
        visible: !row.whole && row.missing <= row.fewAtMost

        Repeater {
            model: row.whole || row.missing > row.fewAtMost ? 0 : row.missing

            NumberKey {
                id: key

                required property int index
                readonly property int count: key.index + 1

                text: Numerals.of(key.count)
                accessibleName: qsTr("%1: %2 found").arg(row.name).arg(Numerals.of(key.count))
                picked: row.found === key.count
                onClicked: row.named(key.count)
            }
        }
    }

    Stepper {
        width: parent.width
        visible: !row.whole && row.missing > row.fewAtMost
        text: qsTr("Found")
        value: row.found
        valueText: Numerals.of(value)
        to: row.missing
        lessName: qsTr("One less: %1").arg(row.name)
        moreName: qsTr("One more: %1").arg(row.name)
        onChanged: value => row.named(value)
    }
}
