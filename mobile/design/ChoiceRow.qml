pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A row that is chosen or not: the peg clips on. `exclusive` rows are one choice among several.
Pressable {
    id: row

    property string drawing: ""
    property string note: ""
    property bool exclusive: false
    property bool arabicScript: Theme.arabicScript
    /// Follows `checked`; where the row `acts`, the caller decides it, and says it in words.
    property bool pegged: row.checked
    /// It opens something below it, and is never chosen.
    property bool acts: false
    readonly property int pictureSide: row.drawing.length > 0 ? Theme.itemSmall : 0

    checkable: !row.acts
    accessibleName: row.text + row.sentence(row.note)
    implicitHeight: Math.max(52, row.implicitContentHeight + row.topPadding + row.bottomPadding)
    startPadding: Theme.cardPadding
    endPadding: Theme.cardPadding + 26
    topPadding: 8 + paper.drop
    bottomPadding: 8 - paper.drop
    autoExclusive: row.exclusive
    Accessible.onToggleAction: row.press()

    background: PaperEdge {
        id: paper

        fill: row.notNow ? "transparent" : Theme.card
        edgeColour: row.hovered || row.pegged ? Theme.ink : Theme.line
        edgeWidth: row.pegged ? 2 : Theme.lineWidth
        pressed: row.down
        dashed: row.notNow

        PegMark {
            x: row.mirrored ? Theme.cardPadding : paper.width - width - Theme.cardPadding
            y: -8
            clipped: row.pegged
        }
    }

    contentItem: Item {
        implicitHeight: Math.max(words.implicitHeight, row.pictureSide)

        Drawing {
            id: picture

            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
            width: row.pictureSide
            height: row.pictureSide
            name: row.drawing
        }

        Column {
            id: words

            anchors.left: picture.right
            anchors.leftMargin: row.pictureSide > 0 ? Theme.cardPadding : 0
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2

            Words {
                width: parent.width
                strong: row.pegged
                soft: row.notNow
                spoken: false
                arabicScript: row.arabicScript
                text: row.text
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                spoken: false
                arabicScript: row.arabicScript
                visible: text.length > 0
                text: row.notNow ? row.notNowReason : row.note
            }
        }
    }
}
