pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App

EndedScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
}
