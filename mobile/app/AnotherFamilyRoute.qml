pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Welcome

WelcomeScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    another: true
    onWentBack: route.screens.go("crew")
    onFinished: {
        route.screens.forgetWhere()
        route.screens.begin()
    }
}
