pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Whether the therapist hears what is played (job.md 1.4, D3): what goes and what never does in
/// plain words, and two answers of equal weight. Whoever never comes here has said no.
Card {
    id: card

    required property Household household

    visible: sharing.with.length > 0
    spacing: Theme.gap

    PlaySharing {
        id: sharing

        household: card.household
    }

    Words {
        width: parent.width
        role: Theme.Label
        heading: true
        text: qsTr("Share what you play with %1?").arg(sharing.with)
    }

    Words {
        width: parent.width
        text: qsTr("What goes: the names of activities, the day and the part of the day, and what you noticed. Also which phone of yours it came from.")
    }

    Words {
        width: parent.width
        text: qsTr("What never goes: kites, notes, what was not played or was stopped early, and how often you open the app.")
    }

    Words {
        width: parent.width
        text: qsTr("It starts with the next play, and you can say no on any day. Then nothing more goes, and what went is taken back. What %1 has read or printed by then stays there.").arg(sharing.with)
    }

    Item { // the peg of what is chosen rises above it
        width: parent.width
        height: Theme.chipGap
    }

    Pair {
        width: parent.width

        ChoiceRow {
            objectName: "sharePlays"
            exclusive: true
            checked: sharing.shares
            text: qsTr("Yes")
            accessibleName: qsTr("Share what you play with %1?").arg(sharing.with) + " " + text
            onToggled: {
                sharing.say(true)
                checked = Qt.binding(() => sharing.shares)
            }
        }

        ChoiceRow {
            objectName: "keepPlays"
            exclusive: true
            checked: !sharing.shares
            text: qsTr("No")
            accessibleName: qsTr("Share what you play with %1?").arg(sharing.with) + " " + text
            onToggled: {
                sharing.say(false)
                checked = Qt.binding(() => !sharing.shares)
            }
        }
    }

    Words {
        objectName: "playsShared"
        width: parent.width
        role: Theme.Reason
        soft: true
        visible: text.length > 0
        text: sharing.said
    }

    ProblemNote {
        width: parent.width
        text: sharing.problem
    }
}
