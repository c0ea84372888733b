pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Settings

SettingsScreen {
    id: route

    required property AppScreens screens

    appearance: route.screens.appearance
    sitting: route.screens.sitting
    onBack: route.screens.go("crew")
}
