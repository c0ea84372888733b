pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A row that opens something: an item or a sign, words, a short word at the end.
Pressable {
    id: row

    property string drawing: ""
    property string sign: ""
    property string note: ""
    property string endText: ""
    /// The page it leads to stands open beside it.
    property bool shown: false
    readonly property string endWords: !row.shown ? row.endText
                                       : row.endText.length > 0 ? qsTr("%1, shown").arg(row.endText) : qsTr("shown")
    readonly property bool beside: row.endWords.length > 0 && !Theme.largeText
    readonly property int pictureSide: row.drawing.length > 0 ? Theme.itemSmall : row.sign.length > 0 ? Theme.signSize : 0

    accessibleName: row.text + row.sentence(row.note) + row.sentence(row.endWords)
    implicitHeight: Math.max(56, row.implicitContentHeight + row.topPadding + row.bottomPadding)
    startPadding: Theme.cardPadding
    endPadding: Theme.smallGap
    topPadding: 8 + paper.drop
    bottomPadding: 8 - paper.drop

    background: PaperEdge {
        id: paper

        fill: row.notNow ? "transparent" : Theme.card
        edgeColour: row.hovered || row.shown ? Theme.ink : Theme.line
        edgeWidth: row.shown ? 2 * Theme.lineWidth : Theme.lineWidth
        pressed: row.down
        dashed: row.notNow
    }

    contentItem: Item {
        implicitHeight: Math.max(words.implicitHeight, row.pictureSide)

        Rectangle {
            anchors.fill: picture
            visible: row.drawing.length > 0 && Theme.scheme === Theme.Dark
            radius: Theme.radiusPaper
            color: Theme.picture
        }

        Drawing {
            id: picture

            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
            width: row.pictureSide
            height: row.pictureSide
            name: row.drawing.length > 0 ? row.drawing : row.sign
            inkColour: row.drawing.length > 0 ? Theme.drawingInk : Theme.ink
        }

        Column {
            id: words

            anchors.left: picture.right
            anchors.leftMargin: row.pictureSide > 0 ? Theme.cardPadding : 0
            anchors.right: row.beside ? end.left : onward.left
            anchors.rightMargin: Theme.smallGap
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2

            Words {
                width: parent.width
                role: Theme.Label
                soft: row.notNow
                strong: !row.notNow
                spoken: false
                text: row.text
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                spoken: false
                visible: text.length > 0
                text: row.notNow ? row.notNowReason : row.note
            }

            Words {
                width: parent.width
                role: Theme.Reason
                spoken: false
                visible: row.endWords.length > 0 && !row.beside
                text: row.endWords
            }
        }

        Words {
            id: end

            anchors.right: onward.left
            anchors.verticalCenter: parent.verticalCenter
            width: Math.min(implicitWidth, row.width / 3)
            role: Theme.Reason
            spoken: false
            visible: row.beside
            text: row.endWords
        }

        OnwardSign {
            id: onward

            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            mirrored: row.mirrored
            visible: !row.notNow
        }
    }
}
