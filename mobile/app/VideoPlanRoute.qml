pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Video

VideoPlanScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onDone: route.screens.goBack()
    onSessionWanted: route.screens.go("video-session")
}
