pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Play

PlayScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    playInHand: route.screens.playInHand
    voice: route.screens.voice
    staysOpen: route.screens.appearance.listened || route.screens.appearance.switches > 0
    kiteInCorner: route.screens.sitting.kiteInCorner
    onKiteFound: route.screens.go("kite")
    onPutBackWanted: route.screens.go("putback")
    onOtherChildWanted: route.screens.go("whose")
    onBurst: route.screens.go("burst")
    onEmergencyWanted: route.screens.callForHelp("play", "")
}
