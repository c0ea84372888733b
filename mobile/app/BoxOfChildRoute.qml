pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Workbench

BoxOfChildScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    besideBoard: route.screens.twoPanes
    onBack: route.screens.goBack()
    onChangeWanted: route.screens.go("revise")
    onCoachingWanted: route.screens.go("coaching")
    onRequestsWanted: route.screens.go("requests")
    onGoalsWanted: route.screens.showGoals("box-of-child")
    onPrintsWanted: route.screens.showPrints("box-of-child")
    onVideoWanted: route.screens.go("video-plan")
}
