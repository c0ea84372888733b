pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Kite

TogetherScreen {
    id: route

    required property AppScreens screens

    onDone: route.screens.go("today")
}
