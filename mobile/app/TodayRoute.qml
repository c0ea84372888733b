pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Today

TodayScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    sitting: route.screens.sitting
    playInHand: route.screens.playInHand
    onRoomWanted: route.screens.go("room")
    onKiteWanted: route.screens.go("kite")
    onGuessWanted: route.screens.go("guess")
    onChooseWanted: route.screens.go("choose")
    onWeekWanted: route.screens.go("week")
    onEverythingWanted: {
        route.screens.searched = ""
        route.screens.go("everything")
    }
    onFloorCheckWanted: route.screens.lookOnTheFloor("today")
    onTakeOutWanted: route.screens.takeOut("today")
    onHaveReadyWanted: route.screens.go("have-ready")
    onBoxWanted: route.screens.go("box")
    onPlayBegun: route.screens.go("play")
    onChildChosen: (family, alias) => route.screens.chooseChild(family, alias)
    foot: MainTabs { screens: route.screens }
}
