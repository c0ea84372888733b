pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A word that can be chosen: chosen, it is a patch of cloth with a peg clipped on.
/// Drawn 40 high inside a target of 48, and never wider than what it lies in.
Pressable {
    id: chip

    /// The caller decides it: a tap only asks.
    property bool picked: false
    /// It does something, and is never chosen.
    property bool acts: false
    readonly property color wordColour: chip.notNow ? Theme.inkSoft : chip.picked ? Theme.chosenText : Theme.ink

    // Qt tells a screen reader these two, and overrides whatever else is said of them.
    checkable: !chip.acts
    checked: chip.picked
    onToggled: chip.checked = Qt.binding(() => chip.picked)
    width: chip.parent ? Math.min(chip.implicitWidth, chip.parent.width) : chip.implicitWidth
    implicitWidth: Math.max(Theme.touchTarget, Math.max(words.implicitWidth, reason.implicitWidth) + chip.leftPadding + chip.rightPadding)
    topInset: 4
    bottomInset: 4
    startPadding: Theme.cardPadding
    endPadding: chip.picked ? Theme.cardPadding + 13 : Theme.cardPadding
    topPadding: 14 - Theme.scriptRoom / 2 + paper.drop
    bottomPadding: 14 - Theme.scriptRoom / 2 - paper.drop
    Accessible.onToggleAction: chip.press()

    background: PaperEdge {
        id: paper

        fill: chip.notNow ? "transparent" : chip.picked ? Theme.chosen : Theme.card
        edgeColour: chip.hovered ? Theme.ink : Theme.line
        edgeWidth: chip.picked && !chip.hovered ? 0 : Theme.lineWidth
        pressed: chip.down
        dashed: chip.notNow
        flat: true

        PegMark {
            x: chip.mirrored ? 5 : paper.width - width - 5
            y: -10
            clipped: chip.picked
        }
    }

    contentItem: Column {
        Words {
            id: words

            width: parent.width
            role: Theme.Reason
            strong: chip.picked
            color: chip.wordColour
            spoken: false
            text: chip.text
        }

        NotNowReason {
            id: reason

            width: parent.width
            text: chip.notNowReason
        }
    }
}
