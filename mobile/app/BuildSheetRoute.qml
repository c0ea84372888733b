pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Builds

BuildSheetScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.bench.openBuild
    onDone: route.screens.goBack()
    onShelfWanted: {
        route.screens.bench.showShelf("build-sheet")
        route.screens.go("shelf")
    }
    onSupplyWanted: itemId => {
        route.screens.bench.showSupply(itemId, "build-sheet")
        route.screens.go("supply")
    }
    onBuildWanted: route.screens.go("build")
    onBoxWanted: code => {
        route.screens.bench.showBox(code, "build-sheet")
        route.screens.go("build-box")
    }
}
