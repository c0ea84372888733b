pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

PackBoxScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.packBuild
    code: route.screens.packBox
    onDone: route.screens.goBack()
}
