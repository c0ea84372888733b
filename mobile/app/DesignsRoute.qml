pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Builds

DesignsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onDone: route.screens.goBack()
    onDesignWanted: design => {
        route.screens.bench.openDesign = design
        route.screens.go("design")
    }
}
