pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.PutBack

/// First line first (safety.md EM-01 to EM-05): no manoeuvres, no country's number built in.
FullStop {
    id: screen

    required property Household household
    readonly property bool canCall: emergency.number.length > 0
    /// Answers before those of what else it may be.
    readonly property int before: screen.canCall ? 2 : 1

    signal done()

    lead: emergency.lead
    text: emergency.words
    answers: (screen.canCall ? [qsTr("Call %1").arg(emergency.number)] : []).concat([qsTr("Back")], emergency.others)
    onAnswered: index => {
        if (screen.canCall && index === 0)
            emergency.call()
        else if (index < screen.before)
            screen.done()
        else
            emergency.choose(index - screen.before)
    }

    EmergencyViewModel {
        id: emergency

        household: screen.household
    }
}
