pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

SharedPlaceScreen {
    id: route

    required property AppScreens screens

    crewLife: route.screens.crewLife
    backName: route.screens.placeBack === "let-in" ? qsTr("Back to letting in") : qsTr("Back to the crew")
    onBack: route.screens.go(route.screens.placeBack)
}
