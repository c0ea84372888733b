pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box

DriedOutScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    itemId: route.screens.item
    onBack: route.screens.goBack()
    onRescued: route.screens.goBack()
    onThrownAway: route.screens.thrownAway()
}
