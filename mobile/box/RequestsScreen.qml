pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// Everything asked for and how far it has come, then what runs low.
Sheet {
    id: screen

    required property Household household

    signal back()

    header: TitleBar {
        text: screen.household.therapist ? qsTr("What is asked for") : qsTr("What to ask for")
        backName: qsTr("Back to the box")
        onBack: screen.back()
    }

    EmptyState {
        width: screen.contentWidth
        visible: cards.count === 0
        drawing: "item-box"
        text: qsTr("Nothing asked for, nothing low")
        note: qsTr("Tap an item in the box to ask for more of it.")
    }

    RequestCards {
        id: cards

        width: screen.contentWidth
        household: screen.household
    }
}
