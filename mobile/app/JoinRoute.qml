pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

JoinScreen {
    id: route

    required property AppScreens screens

    crewLife: route.screens.crewLife
    onBack: route.screens.go("welcome")
    onJoined: route.screens.begin()
}
