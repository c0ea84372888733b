pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Builds

BuildsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    opened: route.screens.listBeside !== "builds" ? ""
            : route.screens.route === "build" ? route.screens.bench.openBuild : route.screens.route
    onDone: route.screens.leave("builds")
    onBuildWanted: build => {
        route.screens.bench.openBuild = build
        route.screens.go("build")
    }
    onDesignsWanted: route.screens.go("designs")
    onShelfWanted: {
        route.screens.bench.showShelf("builds")
        route.screens.go("shelf")
    }
}
