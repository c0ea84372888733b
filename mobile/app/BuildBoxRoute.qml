pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Builds

BuildBoxScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.bench.openBuild
    code: route.screens.bench.openBox
    onDone: route.screens.goBack()
}
