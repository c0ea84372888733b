pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Design

/// The four places of the app, on the cloth. Who packs the boxes begins at the workbench.
TabFoot {
    id: tabs

    required property AppScreens screens
    /// There is neither a box nor a notebook on this phone.
    readonly property bool withoutBoxes: tabs.screens.household.withoutBoxes

    name: qsTr("Places")
    shown: tabs.withoutBoxes ? 2 : tabs.screens.household.guest ? 3 : 4

    Tab {
        objectName: "tab-workbench"
        visible: tabs.screens.household.therapist
        text: qsTr("Workbench")
        sign: "sign-workbench"
        current: tabs.screens.route === "workbench" || tabs.screens.route === "box-of-child"
        onClicked: tabs.screens.go("workbench")
    }
    Tab {
        objectName: "tab-today"
        visible: !tabs.screens.household.therapist
        text: qsTr("Today")
        sign: "sign-today"
        current: tabs.screens.route === "today"
        onClicked: tabs.screens.go("today")
    }
    Tab {
        objectName: "tab-box"
        visible: !tabs.withoutBoxes
        text: qsTr("Box")
        sign: "sign-box"
        current: tabs.screens.route === "box"
        onClicked: tabs.screens.go("box")
    }
    Tab {
        objectName: "tab-notebook"
        visible: !tabs.screens.household.guest && !tabs.withoutBoxes
        text: qsTr("Notebook")
        sign: "sign-notebook"
        current: tabs.screens.route === "notebook"
        onClicked: tabs.screens.go("notebook")
    }
    Tab {
        objectName: "tab-crew"
        text: qsTr("Crew")
        sign: "sign-crew"
        current: tabs.screens.route === "crew"
        onClicked: tabs.screens.go("crew")
    }
}
