pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Kite

KiteScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    byAdult: true
    onShown: kite => route.screens.goOnFrom(kite)
    onGrownUpWanted: route.screens.go("grown-up")
    onSkipped: route.screens.go("today")
}
