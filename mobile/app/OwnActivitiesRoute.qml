pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Own

OwnActivitiesScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    opened: route.screens.listBeside === "own-activities" ? route.screens.bench.ownEntry : ""
    onBack: route.screens.leave("own-activities")
    onWanted: entry => {
        route.screens.bench.ownEntry = entry
        route.screens.go("own-activity")
    }
}
