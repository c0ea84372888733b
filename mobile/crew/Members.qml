pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// Everybody who is in the crew, a phone a card.
Column {
    id: list

    required property CrewLife crewLife

    signal removeWanted(string deviceId, string person)

    spacing: Theme.gap

    SectionWords {
        width: list.width
        text: qsTr("In the crew")
    }

    Repeater {
        model: list.crewLife.members

        Member {
            id: row

            required deviceId
            required person
            required part
            required until
            required thisPhone
            required removable

            width: list.width
            onRemoveWanted: list.removeWanted(row.deviceId, row.person)
        }
    }
}
