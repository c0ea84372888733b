pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Week

WeekScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    playInHand: route.screens.playInHand
    onBack: route.screens.go("today")
    onPlayBegun: route.screens.go("play")
}
