pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.PutBack

/// A small piece may lie on the floor of a home with a small child: nothing else until it is
/// answered.
FullStop {
    id: screen

    required property Household household

    signal done()
    signal emergencyWanted()

    lead: floor.lead
    text: qsTr("Look now: your child's hands and mouth, then table, floor, clothes, dough.") + " " + floor.keepAway
    numbers: floor.missing > 1 ? floor.missing : 0
    numberQuestion: floor.question
    answers: [qsTr("Found"), qsTr("Floor checked, not found"), qsTr("May have swallowed it, or is choking")]
    onAnswered: index => {
        if (index === 0 && floor.found(Math.max(1, screen.number)))
            screen.done()
        else if (index === 1 && floor.floorChecked())
            screen.done()
        else if (index === 2)
            screen.emergencyWanted()
    }

    FloorViewModel {
        id: floor

        household: screen.household
        Component.onCompleted: floor.load()
    }
}
