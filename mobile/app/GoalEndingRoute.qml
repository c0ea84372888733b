pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Goals

GoalEndingScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    goal: route.screens.goal
    onBack: route.screens.goBack()
    onEnded: route.screens.go("goals")
}
