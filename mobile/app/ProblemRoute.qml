pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App

ProblemScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
}
