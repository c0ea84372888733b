pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Welcome

WelcomeScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    another: true
    onLeft: route.screens.go("crew")
    onFinished: {
        route.screens.forgetWhere()
        route.screens.begin()
    }
}
