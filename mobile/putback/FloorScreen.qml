pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.PutBack

/// A small piece may lie on the floor: nothing else until it is answered. The words for an
/// emergency are one tap away, wherever the page stands.
FullStop {
    id: screen

    required property Household household

    signal done()
    signal emergencyWanted()

    lead: floor.lead
    text: floor.text
    answers: [qsTr("Found"), qsTr("Floor checked, not found")]
    notNowReason: floor.named === 0 ? qsTr("First say above what is found") : ""
    urgent: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "May have swallowed it, or is choking"))
    onAnswered: index => {
        if (index === 0 ? floor.keepFound() : floor.floorChecked())
            screen.done()
    }
    onUrgentClicked: screen.emergencyWanted()

    ProblemNote {
        width: parent.width
        text: floor.problem
    }

    Repeater {
        model: floor

        FoundRow {
            id: row

            required property string itemId
            required property int index
            required drawing
            required name
            required note
            required missing
            required found
            required whole
            required wholeText

            objectName: "missing-" + row.itemId
            width: parent ? parent.width : 0
            onNamed: pieces => floor.nameFound(row.index, pieces)
        }
    }

    FloorViewModel {
        id: floor

        household: screen.household
        Component.onCompleted: floor.load()
    }
}
