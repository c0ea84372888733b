pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

LetInScreen {
    id: route

    required property AppScreens screens

    crewLife: route.screens.crewLife
    onBack: route.screens.go(route.screens.bench.crewPage)
    onPlaceWanted: {
        route.screens.placeBack = "let-in"
        route.screens.go("shared-place")
    }
}
