pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Shelf

SupplyScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    item: route.screens.bench.supply
    onBack: route.screens.goBack()
    onKept: route.screens.goBack()
    onMeasureWanted: kind => {
        route.screens.bench.showOwnItem(kind, "supply")
        route.screens.go("own-item")
    }
    onRecallWanted: lot => {
        route.screens.bench.recallLot = lot
        route.screens.go("recall")
    }
}
