pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Kite
import Lidlark.Today

/// The child's choice among what Today offers: the same menu, without a word.
FocusScope {
    id: screen

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand

    signal playBegun()
    signal left()

    TodayViewModel {
        id: today

        household: screen.household
        sitting: screen.sitting
        playInHand: screen.playInHand
        Component.onCompleted: today.refresh()
    }

    ChooseScreen {
        anchors.fill: parent
        focus: true
        offers: today
        onChosen: activityId => {
            if (today.begin(activityId))
                screen.playBegun()
        }
        onLeft: screen.left()
    }
}
