pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box

BoxScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onCountWanted: route.screens.go("count")
    onFloorCheckWanted: route.screens.lookOnTheFloor("box")
    onTakeOutWanted: route.screens.takeOut("box")
    foot: MainTabs { screens: route.screens }
}
