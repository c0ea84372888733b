pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Welcome

WelcomeScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    joinedBy: route.screens.household.child
    onFinished: route.screens.begin()
}
