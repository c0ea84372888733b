pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Packing

RecallScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    lot: route.screens.bench.recallLot
    onDone: route.screens.goBack()
}
