pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Prints

PrintsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    opened: route.screens.listBeside === "prints" ? route.screens.print : ""
    onPrintWanted: what => {
        route.screens.print = what
        route.screens.go("print-preview")
    }
    onBack: route.screens.leave("prints")
}
