pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Notebook

NotebookScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    foot: MainTabs { screens: route.screens }
}
