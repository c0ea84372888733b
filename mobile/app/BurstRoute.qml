pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Play

BurstScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    playInHand: route.screens.playInHand
    onDone: route.screens.go("putback")
}
