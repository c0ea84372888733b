pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Own

OwnActivityScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    entry: route.screens.bench.ownEntry
    onBack: route.screens.goBack()
}
