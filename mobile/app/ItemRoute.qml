pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box

ItemScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    itemId: route.screens.item
    onBack: route.screens.goBack()
    onFloorCheckWanted: route.screens.lookOnTheFloor("item")
    onDriedOutWanted: route.screens.driedOut(route.itemId)
}
