pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Prints

PrintsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onPrintWanted: what => {
        route.screens.print = what
        route.screens.go("print-preview")
    }
    onBack: route.screens.goBack()
}
