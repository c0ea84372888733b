pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

JoinScreen {
    id: route

    required property AppScreens screens

    crewLife: route.screens.crewLife
    onBack: route.screens.go(route.screens.household.needsWelcome ? "welcome" : route.screens.bench.crewPage)
    onJoined: {
        if (route.screens.household.homeToBeTold())
            route.screens.go("home-first")
        else
            route.screens.begin()
    }
}
