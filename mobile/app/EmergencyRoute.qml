pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.PutBack

EmergencyScreen {
    id: route

    required property AppScreens screens

    onDone: route.screens.go("floor")
}
