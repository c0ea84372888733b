pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

RecallScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onDone: route.screens.goBack()
}
