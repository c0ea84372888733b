pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Own

OwnActivitiesScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.goBack()
    onWanted: entry => {
        route.screens.bench.ownEntry = entry
        route.screens.go("own-activity")
    }
}
