pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.PutBack

DifferentScreen {
    id: route

    required property AppScreens screens
    /// Asked about on another day: no after-kite, no question more (job.md scenario 6).
    property bool late: false

    household: route.screens.household
    playInHand: route.screens.playInHand
    Component.onCompleted: route.late = route.screens.playInHand.fromBefore
    onBack: route.screens.go(route.late ? "resume" : "putback")
    onFloorCheckWanted: route.screens.lookOnTheFloor(route.screens.playInHand.active ? "different" : "today")
    onDriedOutWanted: itemId => route.screens.driedOut(itemId)
    onDone: activityId => {
        route.screens.afterActivity = activityId
        route.screens.go(route.late ? "today" : "noticed")
    }
}
