pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.PutBack

EmergencyScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    trouble: route.screens.trouble
    onDone: route.screens.go(route.screens.emergencyBack)
}
