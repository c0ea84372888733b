pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Today

RoomScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    onDone: route.screens.go("today")
    onHomeSheetWanted: route.screens.go("home-sheet")
}
