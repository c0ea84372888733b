pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box

BoxScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    onCountWanted: route.screens.go("count")
    onFloorCheckWanted: route.screens.lookOnTheFloor("box")
    onTakeOutWanted: route.screens.takeOut("box")
    onItemWanted: itemId => route.screens.showItem(itemId)
    onNotedWanted: route.screens.showNoted("box")
    onRequestsWanted: route.screens.go("requests")
    onPrintsWanted: route.screens.showPrints("box")
    foot: MainTabs { screens: route.screens }
}
