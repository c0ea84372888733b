pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Builds

BuildScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.bench.openBuild
    opened: route.screens.listBeside === "build" && route.screens.route === "build-box" ? route.screens.bench.openBox : ""
    onDone: route.screens.leave("build")
    onBoxWanted: code => {
        route.screens.bench.showBox(code, "")
        route.screens.go("build-box")
    }
    onSheetWanted: route.screens.go("build-sheet")
    onDesignsWanted: route.screens.go("designs")
}
