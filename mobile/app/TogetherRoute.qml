pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Kite

TogetherScreen {
    id: route

    required property AppScreens screens

    card: route.screens.togetherCard
    breathsLeft: !route.screens.sitting.breathsBegun
    onBreathsWanted: {
        route.screens.togetherCard = route.card
        route.screens.sitting.beginBreaths()
        route.screens.go("breaths")
    }
    onDone: route.screens.go("today")
}
