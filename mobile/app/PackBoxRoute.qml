pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

PackBoxScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.bench.packBuild
    code: route.screens.bench.packBox
    onDone: route.screens.goBack()
    onBoxWanted: {
        route.screens.bench.openBuild = route.screens.bench.packBuild
        route.screens.bench.showBox(route.screens.bench.packBox, "pack-box")
        route.screens.go("build-box")
    }
}
