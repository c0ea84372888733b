pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Kite
import Lidlark.Today

/// The child's choice among what Today offers: the same menu, without a word.
ChooseScreen {
    id: route

    required property AppScreens screens

    offers: today
    voice: route.screens.voice
    onChosen: activityId => {
        if (today.begin(activityId))
            route.screens.go("play")
        else
            route.screens.go("today")
    }
    onSkipped: route.screens.go("today")

    TodayViewModel {
        id: today

        household: route.screens.household
        sitting: route.screens.sitting
        playInHand: route.screens.playInHand
    }
}
