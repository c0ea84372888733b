pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Prints
import Lidlark.Settings

SettingsScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    appearance: route.screens.appearance
    reminders: route.screens.reminders
    sitting: route.screens.sitting
    childName: route.screens.household.child
    reviewNotice: route.screens.household.reviewNotice
    voice: route.screens.voice
    paperNote: paperKite.said
    onPaperKiteWanted: paperKite.save()
    onBack: route.screens.go("crew")

    KiteCardFile {
        id: paperKite

        objectName: "paperKiteFile"
    }
}
