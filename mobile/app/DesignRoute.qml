pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Builds

DesignScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    design: route.screens.bench.openDesign
    onDone: route.screens.goBack()
}
