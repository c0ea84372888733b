pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.PutBack

PutBackScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    playInHand: route.screens.playInHand
    appearance: route.screens.appearance
    voice: route.screens.voice
    onPlayWanted: {
        if (route.screens.playInHand.goOnPlaying())
            route.screens.go("play")
    }
    onEmergencyWanted: route.screens.callForHelp("putback", "")
    onOtherChildWanted: route.screens.go("whose")
    onDifferentWanted: route.screens.go("different")
    onDone: activityId => {
        route.screens.afterActivity = activityId
        route.screens.go("noticed")
    }
}
