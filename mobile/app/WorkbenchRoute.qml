pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Workbench

WorkbenchScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    opened: route.screens.twoPanes ? route.screens.route : ""
    onChildWanted: alias => route.screens.showBoxOf(alias)
    onRoundWanted: route.screens.go("round")
    onPackingWanted: route.screens.go("packing")
    onBuildsWanted: route.screens.go("builds")
    onReportWanted: route.screens.go("report")
    onOwnActivitiesWanted: route.screens.go("own-activities")
    foot: MainTabs { screens: route.screens }
}
