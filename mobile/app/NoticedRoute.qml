pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.PutBack

NoticedScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    playInHand: route.screens.playInHand
    askKite: route.screens.sitting.kiteToComplete
    onDone: {
        route.screens.sitting.leaveKiteAfter()
        route.screens.go("today")
    }
    onKiteWanted: route.screens.go("kite-after")
}
