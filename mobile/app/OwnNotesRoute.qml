pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Notebook

OwnNotesScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    onBack: route.screens.go("notebook")
}
