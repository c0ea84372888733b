pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One item of which not all came home: what happened, and to how many. All words weigh the same.
Card {
    id: row

    property string drawing: ""
    property string name: ""
    property string note: ""
    property list<string> words
    property int currentWord: -1
    property string countQuestion: ""
    property int countTo: 0
    /// 1, 2, ... as the language writes them; without: as digits.
    property list<string> numbers
    property int currentCount: 0

    signal wordChosen(int index)
    signal countChosen(int count)

    width: parent ? parent.width : implicitWidth
    spacing: 8

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
            spacing: 4

            Words {
                width: parent.width
                role: Theme.Row
                text: row.name
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                visible: text.length > 0
                text: row.note
            }
        }
    }

    ChipFlow {
        Repeater {
            model: row.words

            FilterChip {
                id: chip

                required property int index
                required property string modelData

                accessibleName: row.name + ": " + chip.modelData
                text: chip.modelData
                picked: row.currentWord === chip.index
                onClicked: row.wordChosen(chip.index)
            }
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.cardPadding
        visible: row.currentWord >= 0 && row.countTo > 0

        Item {
            width: question.width
            height: Math.max(Theme.touchTarget, question.height)

            Words {
                id: question

                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(implicitWidth, row.width - 2 * row.padding)
                text: row.countQuestion
            }
        }

        Repeater {
            model: row.countTo

            NumberKey {
                id: key

                required property int index
                readonly property int count: key.index + 1

                text: row.numbers[key.index] ?? key.count
                accessibleName: row.currentWord < 0 ? key.text
                              : qsTr("%1 %2: %3").arg(key.text).arg(row.words[row.currentWord]).arg(row.name)
                picked: row.currentCount === key.count
                onClicked: row.countChosen(key.count)
            }
        }
    }
}
