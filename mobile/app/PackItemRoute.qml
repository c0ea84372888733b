pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

PackItemScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    build: route.screens.packBuild
    onDone: route.screens.goBack()
}
