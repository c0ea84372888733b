pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Own

OwnItemsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.goBack()
    onWanted: entry => {
        route.screens.bench.showOwnItem(entry, "own-items")
        route.screens.go("own-item")
    }
}
