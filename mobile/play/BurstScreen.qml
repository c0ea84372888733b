pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Play

/// A balloon burst: nothing else can be done until the pieces are dealt with (scenario 2).
FullStop {
    id: screen

    required property Household household
    required property PlayInHand playInHand

    signal done()
    signal pieceMissing()

    lead: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Pick up every piece now."))
    text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Keep them from small children. A piece of balloon can block a throat."))
    answers: [qsTr("All pieces found"), qsTr("Can't find a piece")]
    onAnswered: index => {
        if (!burst.note(index === 0))
            return
        if (index === 0)
            screen.done()
        else
            screen.pieceMissing()
    }

    BurstViewModel {
        id: burst

        playInHand: screen.playInHand
    }
}
