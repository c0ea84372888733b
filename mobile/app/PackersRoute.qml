pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

PackersScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    crewLife: route.screens.crewLife
    onBack: route.screens.go("packing")
    onLetInWanted: route.screens.go("let-in")
    onComeInWanted: route.screens.go("join")
    onPlaceWanted: {
        route.screens.placeBack = "packers"
        route.screens.go("shared-place")
    }
    onHandOverWanted: route.screens.go("hand-over")
    onRemoveWanted: (deviceId, person) => {
        route.screens.member = deviceId
        route.screens.memberName = person
        route.screens.go("remove")
    }
    Component.onCompleted: {
        route.screens.bench.crewPage = "packers"
        route.screens.crewLife.table = true
    }
}
