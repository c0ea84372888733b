pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Play

BurstScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    playInHand: route.screens.playInHand
    onDone: {
        route.screens.playInHand.startPuttingBack()
        route.screens.go("putback")
    }
    onPieceMissing: {
        route.screens.playInHand.startPuttingBack()
        route.screens.lookOnTheFloor("putback")
    }
}
