pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One thing with its picture: it must leave the house, has left, or stays.
Column {
    id: row

    property string heading: ""
    property string name: ""
    property string drawing: ""
    property string note: ""
    property bool stays: false
    property bool out: false

    signal confirmed()

    spacing: Theme.chipGap

    SectionWords {
        width: row.width
        visible: row.heading.length > 0
        text: row.heading
    }

    Card {
        width: row.width
        spacing: Theme.chipGap

        Item {
            width: parent.width
            implicitHeight: Math.max(picture.height, words.height)

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
                id: words

                anchors.left: picture.right
                anchors.leftMargin: Theme.cardPadding
                anchors.right: parent.right
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
            visible: !row.stays
            picked: row.out
            accessibleName: row.name + ": " + text
            text: qsTr("Taken out")
            onClicked: row.confirmed()
        }
    }
}
