pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

RemoveScreen {
    id: route

    required property AppScreens screens

    crewLife: route.screens.crewLife
    member: route.screens.member
    person: route.screens.memberName
    own: route.screens.crewLife.isOwn(route.screens.member)
    onBack: route.screens.go(route.screens.bench.crewPage)
}
