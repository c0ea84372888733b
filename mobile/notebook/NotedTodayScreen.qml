pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Notebook

/// What was noted today, with its way back: nothing is asked before a tap counts, so every tap can
/// be taken back.
Sheet {
    id: screen

    required property Household household

    signal back()

    NotedViewModel {
        id: noted

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Noted today")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    ProblemNote {
        objectName: "notedProblem"
        width: screen.contentWidth
        text: noted.problem
    }

    EmptyState {
        width: screen.contentWidth
        visible: noted.count === 0
        drawing: "item-lid"
        text: qsTr("Nothing noted today")
        note: qsTr("What is noted stands here until the day is over. Until then it can be taken back.")
    }

    Words {
        width: screen.contentWidth
        visible: noted.count > 0
        role: Theme.Reason
        soft: true
        text: qsTr("Until the day is over, each of you can take back what you noted.")
    }

    Repeater {
        model: noted

        NotedRow {
            id: row

            required property int index

            width: screen.contentWidth
            onTakenBackWanted: noted.takeBack(row.index)
            onPutInWanted: noted.putInAgain(row.index)
        }
    }
}
