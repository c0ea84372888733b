pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What the kite said, at the head of Today. In large text it keeps one line and no picture.
Pressable {
    id: row

    property string drawing: ""
    property string note: ""
    readonly property bool pictured: row.drawing.length > 0 && !Theme.largeText
    readonly property real edge: Theme.cardEdgeWidth

    accessibleName: row.text + row.sentence(row.note)
    implicitHeight: Math.max(60, row.implicitContentHeight + 2 * (8 - Theme.scriptRoom))
    topPadding: row.edge + paper.drop
    bottomPadding: row.edge - paper.drop
    startPadding: row.edge
    endPadding: Theme.cardPadding

    background: PaperEdge {
        id: paper

        edgeColour: row.hovered ? Theme.ink : Theme.cardEdge
        pressed: row.down
    }

    contentItem: Item {
        implicitHeight: words.implicitHeight

        PictureGround {
            id: picture

            anchors.left: parent.left
            width: row.pictured ? 112 : 0
            height: parent.height
            mirrored: row.mirrored

            Drawing {
                anchors.centerIn: parent
                width: 104
                height: 55
                name: row.drawing
            }
        }

        Column {
            id: words

            anchors.left: picture.right
            anchors.leftMargin: Theme.cardPadding + 1
            anchors.right: onward.left
            anchors.verticalCenter: parent.verticalCenter
            spacing: 3 - Theme.scriptRoom

            Words {
                width: parent.width
                role: Theme.Label
                spoken: false
                text: row.text
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                spoken: false
                visible: row.note.length > 0 && !Theme.largeText
                text: row.note
            }
        }

        OnwardSign {
            id: onward

            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            mirrored: row.mirrored
        }
    }
}
