pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box

TakeOutScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onDone: route.screens.go(route.screens.takeOutBack)
    onEmergencyWanted: route.screens.callForHelp("take-out", "breathing")
}
