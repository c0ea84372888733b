pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Shelf

ShelfScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    opened: route.screens.listBeside === "shelf" ? route.screens.bench.supply : ""
    searched: route.screens.bench.shelfSearched
    only: route.screens.bench.shelfOnly
    shown: route.screens.bench.supply
    onBack: route.screens.leave("shelf")
    onSupplyWanted: itemId => route.show(itemId)
    onNewWanted: route.show("")
    onOwnWanted: route.screens.go("own-items")

    function show(itemId: string) {
        route.screens.bench.shelfSearched = route.searched
        route.screens.bench.shelfOnly = route.only
        route.screens.bench.showSupply(itemId, "shelf")
        route.screens.go("supply")
    }
}
