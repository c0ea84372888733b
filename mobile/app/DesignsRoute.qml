pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Builds

DesignsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    opened: route.screens.listBeside === "designs" ? route.screens.bench.openDesign : ""
    onDone: route.screens.leave("designs")
    onDesignWanted: design => {
        route.screens.bench.openDesign = design
        route.screens.go("design")
    }
}
