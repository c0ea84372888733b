pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Own

OwnItemScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    entry: route.screens.bench.ownItem
    onBack: route.screens.goBack()
}
