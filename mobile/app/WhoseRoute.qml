pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Today

WhoseScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    activityName: route.screens.playInHand.activityName
    onBack: route.screens.goBack()
    onChosen: (family, alias) => route.screens.chooseChild(family, alias)
}
