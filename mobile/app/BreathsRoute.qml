pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Kite

KiteBreathsScreen {
    id: route

    required property AppScreens screens

    onDone: route.screens.go("together")
}
