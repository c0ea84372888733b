pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.PutBack

FloorScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onDone: route.screens.go(route.screens.floorBack)
    onEmergencyWanted: route.screens.callForHelp("floor", "airway")
}
