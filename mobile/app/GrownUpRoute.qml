pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Kite

GrownUpScreen {
    id: route

    required property AppScreens screens

    childName: route.screens.household.child
    onDone: route.screens.goOnFrom("")
}
