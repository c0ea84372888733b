pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box

CountScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onDone: route.screens.go("box")
}
