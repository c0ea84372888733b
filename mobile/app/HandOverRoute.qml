pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

HandOverScreen {
    id: route

    required property AppScreens screens

    crewLife: route.screens.crewLife
    onBack: route.screens.go(route.screens.bench.crewPage)
}
