pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Goals

GoalWritingScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    goal: route.screens.goal
    onBack: route.screens.goBack()
    onAgreed: route.screens.goBack()
}
