pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

PackingScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    opened: route.screens.listBeside === "packing" && route.screens.route === "pack-box" ? route.screens.bench.packBox : ""
    build: route.screens.bench.packBuild
    onDone: route.screens.leave("packing")
    onBuildChosen: build => route.screens.bench.packBuild = build
    onBoxWanted: code => route.show("pack-box", code)
    onByItemWanted: route.show("pack-item", "")
    onBuildsWanted: route.screens.go("builds")
    onPrintWanted: what => {
        route.screens.print = what
        route.show("print-build", "")
    }
    onTendWanted: route.screens.go("tend")
    onRecallWanted: {
        route.screens.bench.recallLot = ""
        route.screens.go("recall")
    }
    onPackersWanted: route.screens.go("packers")

    function show(where: string, code: string) {
        route.screens.bench.packBuild = route.shownBuild
        route.screens.bench.packBox = code
        route.screens.go(where)
    }
}
