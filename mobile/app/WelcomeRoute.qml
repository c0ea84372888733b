pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Welcome

WelcomeScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onCodeWanted: route.screens.go("join")
    onClinicWanted: route.screens.go("clinic")
    onFinished: route.screens.begin()
}
