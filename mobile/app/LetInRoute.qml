pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

LetInScreen {
    id: route

    required property AppScreens screens

    crewLife: route.screens.crewLife
    onBack: route.screens.go("crew")
    onPlaceWanted: {
        route.screens.placeBack = "let-in"
        route.screens.go("shared-place")
    }
}
