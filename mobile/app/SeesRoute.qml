pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

SeesScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.go("crew")
}
