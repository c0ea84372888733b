pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Workbench

ReportScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.goBack()
}
