pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box

CountScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    appearance: route.screens.appearance
    voice: route.screens.voice
    onDone: route.screens.go("box")
    onFloorCheckWanted: route.screens.lookOnTheFloor("box")
}
