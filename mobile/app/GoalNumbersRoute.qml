pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Goals

GoalNumbersScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.goBack()
}
