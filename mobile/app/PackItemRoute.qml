pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

PackItemScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.bench.packBuild
    onDone: route.screens.goBack()
}
