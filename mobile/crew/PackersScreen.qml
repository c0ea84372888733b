pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// The crew of the packing table: who packs too, and how ticks travel between their phones. It has
/// nothing to do with any child's crew.
Sheet {
    id: screen

    required property Household household
    required property CrewLife crewLife

    signal back()
    signal letInWanted()
    signal comeInWanted()
    signal placeWanted()
    signal handOverWanted()
    signal removeWanted(string deviceId, string person)

    news: screen.crewLife.state

    header: TitleBar {
        text: qsTr("Who packs with you")
        backName: qsTr("Back to the packing table")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Label
        text: screen.crewLife.state
    }

    Repeater {
        model: screen.crewLife.troubles

        ProblemNote {
            required property string modelData

            width: screen.contentWidth
            text: modelData
        }
    }

    Words {
        width: screen.contentWidth
        visible: !screen.crewLife.inCrew && !screen.crewLife.outside
        text: qsTr("Nobody yet. Whoever you let in sees this table on their own phone, and what each of you ticks comes to the other.")
    }

    WhereItGoes {
        width: screen.contentWidth
        visible: screen.crewLife.inCrew || screen.crewLife.outside
        household: screen.household
        crewLife: screen.crewLife
        onComeInWanted: screen.comeInWanted()
    }

    Members {
        width: screen.contentWidth
        visible: screen.crewLife.inCrew
        crewLife: screen.crewLife
        onRemoveWanted: (deviceId, person) => screen.removeWanted(deviceId, person)
    }

    CrewLinks {
        width: screen.contentWidth
        household: screen.household
        crewLife: screen.crewLife
        onLetInWanted: screen.letInWanted()
        onPlaceWanted: screen.placeWanted()
        onHandOverWanted: screen.handOverWanted()
    }
}
