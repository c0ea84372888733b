pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Kite

KiteScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    appearance: route.screens.appearance
    voice: route.screens.voice
    onShown: kite => route.screens.goOnFrom(kite)
    onGrownUpWanted: route.screens.go("grown-up")
    onSkipped: {
        route.screens.sitting.skipKite()
        route.screens.goOnFrom("")
    }
}
