pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Notebook

NotebookScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    foot: MainTabs { screens: route.screens }
}
