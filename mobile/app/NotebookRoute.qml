pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Notebook

NotebookScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    onNotedWanted: route.screens.showNoted("notebook")
    onGoalsWanted: route.screens.showGoals("notebook")
    onOwnNotesWanted: route.screens.go("own-notes")
    foot: MainTabs { screens: route.screens }
}
