pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Easier or harder: its sign, the word, and what changes. A peg on it: it is played that way.
Pressable {
    id: card

    property string sign: ""
    property string note: ""
    property bool chosen: false

    accessibleName: card.text + card.sentence(card.note)
    // Qt tells a screen reader these two, and overrides whatever else is said of them.
    checkable: true
    checked: card.chosen
    onToggled: card.checked = Qt.binding(() => card.chosen)
    Accessible.onToggleAction: card.press()
    implicitHeight: Math.max(76, card.implicitContentHeight + card.topPadding + card.bottomPadding)
    startPadding: Theme.cardPadding
    topPadding: 12 + paper.drop
    bottomPadding: 12 - paper.drop

    background: PaperEdge {
        id: paper

        fill: card.notNow ? "transparent" : Theme.card
        edgeColour: card.hovered || card.chosen ? Theme.ink : Theme.line
        edgeWidth: card.chosen ? 2 : Math.max(1, Theme.cardEdgeWidth)
        pressed: card.down
        dashed: card.notNow

        PegMark {
            x: card.mirrored ? Theme.cardPadding : paper.width - width - Theme.cardPadding
            y: -8
            clipped: card.chosen
        }
    }

    contentItem: Column {
        spacing: 3

        Row {
            width: parent.width
            spacing: 8

            Drawing {
                id: mark

                y: (label.height - height) / 2
                width: Theme.signSize
                height: Theme.signSize
                name: card.sign
                inkColour: card.notNow ? Theme.inkSoft : Theme.ink
            }

            Words {
                id: label

                width: parent.width - mark.width - parent.spacing
                role: Theme.Label
                strong: !card.notNow
                soft: card.notNow
                spoken: false
                text: card.text
            }
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            spoken: false
            visible: text.length > 0
            text: card.notNow ? card.notNowReason : card.note
        }
    }
}
