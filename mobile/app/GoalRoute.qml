pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Goals

GoalScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    goal: route.screens.goal
    onBack: route.screens.goBack()
    onRatingWanted: route.screens.go("goal-rating")
    onWordsWanted: route.screens.go("goal-writing")
    onEndWanted: route.screens.go("goal-ending")
    Component.onCompleted: route.screens.bench.goalBack = "goal"
}
