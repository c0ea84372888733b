pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Goals

GoalsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.leave("goals")
    onGoalWanted: goal => route.screens.showGoal("goal-writing", goal)
    onRatingWanted: goal => route.screens.showGoal("goal-rating", goal)
    onPageWanted: goal => route.screens.showGoal("goal", goal)
    Component.onCompleted: route.screens.bench.goalBack = "goals"
    onNumbersWanted: route.screens.go("goal-numbers")
}
