pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Video

HaveReadyScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onDone: route.screens.goBack()
}
