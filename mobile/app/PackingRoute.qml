pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

PackingScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.packBuild
    onDone: route.screens.goBack()
    onBuildChosen: build => route.screens.packBuild = build
    onBoxWanted: code => route.show("pack-box", code)
    onByItemWanted: route.show("pack-item", "")
    onTendWanted: route.screens.go("tend")
    onRecallWanted: route.screens.go("recall")

    function show(where: string, code: string) {
        route.screens.packBuild = route.shownBuild
        route.screens.packBox = code
        route.screens.go(where)
    }
}
