pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Welcome

ClinicScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.go("welcome")
    onCodeWanted: route.screens.go("join")
    onFinished: route.screens.begin()
}
