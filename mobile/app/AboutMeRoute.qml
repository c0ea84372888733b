pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Bridge
import Lidlark.Crew

AboutMeScreen {
    id: route

    required property AppScreens screens

    voice: route.screens.voice
    childName: route.screens.household.child
    shared: route.screens.crewLife.inCrew && route.screens.crewLife.agreed
    toldTo: sharing.shares ? sharing.with : ""
    onBack: route.screens.go("crew")

    PlaySharing {
        id: sharing

        household: route.screens.household
    }
}
