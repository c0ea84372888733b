pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Workbench

ReviseScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.goBack()
    onSent: route.screens.goBack()
}
