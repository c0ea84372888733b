pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Prints

/// What is printed of the build on the packing table.
PrintPreviewScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    print: route.screens.print
    build: route.screens.bench.packBuild
    backName: qsTr("Back to the packing table")
    onBack: route.screens.goBack()
}
