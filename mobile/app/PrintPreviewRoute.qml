pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Prints

PrintPreviewScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    print: route.screens.print
    onBack: route.screens.go("prints")
}
