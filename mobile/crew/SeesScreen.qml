pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// What each part of a crew can see, and what not (events.md 4): a card each, the same six things
/// in the same order.
Sheet {
    id: screen

    required property Household household

    signal back()

    header: TitleBar {
        text: qsTr("What each can see")
        backName: qsTr("Back to the crew")
        onBack: screen.back()
    }

    Sees {
        width: screen.contentWidth
        part: qsTr("Parent")
        sees: qsTr("Sees: box and counts, home sheet, plays, kites, goals.")
        seesNot: qsTr("Does not see: notes of others.")
        note: qsTr("A parent in another home sees the box and the goals, and their own home's plays, kites and home sheet.")
    }

    Sees {
        width: screen.contentWidth
        part: qsTr("Family or carer")
        sees: qsTr("Sees: box and counts, home sheet, plays, kites.")
        seesNot: qsTr("Does not see: goals, notes of others.")
    }

    Sees {
        width: screen.contentWidth
        part: qsTr("Guest for a few days")
        sees: qsTr("Sees: box and counts, home sheet, own plays.")
        seesNot: qsTr("Does not see: plays of others, kites, goals, notes of others.")
        note: qsTr("As they stand on the day of the invitation, and on until its end.")
    }

    Sees {
        width: screen.contentWidth
        part: qsTr("Therapist")
        sees: qsTr("Sees: box and counts, home sheet, goals.")
        seesNot: qsTr("Does not see: kites, notes of others.")
        note: qsTr("Sees plays only of a home that shares them.")
    }

    ShareChoice {
        width: screen.contentWidth
        household: screen.household
    }

    Sees {
        width: screen.contentWidth
        part: qsTr("The place where it lies")
        sees: qsTr("Sees: that something is there, how large it is, and when it came.")
        seesNot: qsTr("Does not see: anything that is written in it.")
    }
}
