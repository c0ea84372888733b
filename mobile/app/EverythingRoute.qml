pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Today

EverythingScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    playInHand: route.screens.playInHand
    searched: route.screens.searched
    onSearchedChanged: route.screens.searched = route.searched
    onItemWanted: itemId => route.screens.showItem(itemId)
    onBack: route.screens.go("today")
    onPlayBegun: route.screens.go("play")
}
