pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.HomeSheet

HomeSheetScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onTellWanted: route.screens.go("home-first")
    onTakeOutWanted: route.screens.takeOut("home-sheet")
    onBack: route.screens.go("crew")
}
