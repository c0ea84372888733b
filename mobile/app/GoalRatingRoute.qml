pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Goals

GoalRatingScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    goal: route.screens.goal
    onBack: route.screens.goBack()
    onKept: route.screens.goBack()
}
