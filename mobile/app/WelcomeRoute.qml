pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Welcome

WelcomeScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onFinished: route.screens.begin()
}
