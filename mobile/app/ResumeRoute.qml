pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App

ResumeScreen {
    id: route

    required property AppScreens screens

    playInHand: route.screens.playInHand
    onAnswered: route.screens.begin()
    onGoOnWanted: route.screens.begin()
    onCountWanted: {
        if (route.screens.playInHand.startPuttingBack())
            route.screens.go("putback")
    }
    onSomethingDifferent: route.screens.go("different")
}
