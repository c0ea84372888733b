pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design
import Lidlark.HomeSheet
import Lidlark.Kite
import Lidlark.Notebook
import Lidlark.Play
import Lidlark.PutBack
import Lidlark.Settings
import Lidlark.Today
import Lidlark.Welcome

/// Every route of the app. A screen says what is wanted; this answers with the next screen.
FocusScope {
    id: screens

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand
    required property Appearance appearance
    property string route: ""
    property string afterActivity: ""
    property string problem: ""
    readonly property Item current: loader.item as Item

    function go(where: string) {
        screens.problem = ""
        screens.route = where
    }

    /// Where a start, or a new child, begins.
    function begin() {
        if (screens.household.problem.length > 0)
            screens.go("problem")
        else if (screens.household.needsWelcome)
            screens.go("welcome")
        else if (screens.playInHand.active && screens.playInHand.fromBefore)
            screens.go("resume")
        else if (screens.playInHand.active)
            screens.go(screens.playInHand.puttingBack ? "putback" : "play")
        else
            screens.go("today")
    }

    function componentFor(where: string): Component {
        switch (where) {
        case "problem": return problemScreen
        case "welcome": return welcomeScreen
        case "resume": return resumeScreen
        case "room": return roomScreen
        case "kite": return kiteScreen
        case "kite-after": return kiteAfterScreen
        case "grown-up": return grownUpScreen
        case "together": return togetherScreen
        case "choose": return chooseScreen
        case "everything": return everythingScreen
        case "play": return playScreen
        case "burst": return burstScreen
        case "putback": return putBackScreen
        case "different": return differentScreen
        case "floor": return floorScreen
        case "emergency": return emergencyScreen
        case "noticed": return noticedScreen
        case "box": return boxScreen
        case "count": return countScreen
        case "notebook": return notebookScreen
        case "crew": return crewScreen
        case "home-sheet": return homeSheetScreen
        case "settings": return settingsScreen
        default: return todayScreen
        }
    }

    Component.onCompleted: screens.begin()

    Connections {
        target: screens.household

        function onProblemChanged() {
            screens.begin()
        }
    }

    Connections {
        target: screens.playInHand

        function onFailed(problem: string) {
            screens.problem = problem
        }
    }

    Connections {
        target: screens.sitting

        function onFailed(problem: string) {
            screens.problem = problem
        }
    }

    Loader {
        id: loader

        anchors.fill: parent
        focus: true
        sourceComponent: screens.componentFor(screens.route)
        onLoaded: {
            arrival.restart()
            loader.item.forceActiveFocus()
        }

        NumberAnimation on opacity {
            id: arrival

            from: Theme.reducedMotion ? 1 : 0
            to: 1
            duration: Theme.pageMs
        }
    }

    ProblemNote {
        objectName: "failed"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.margin
        visible: screens.problem.length > 0
        text: screens.problem
        actionText: qsTr("Put away")
        onAction: screens.problem = ""
    }

    component MainTabs: TabFoot {
        id: tabs

        required property string here

        signal chosen(string where)

        Tab {
            objectName: "tab-today"
            text: qsTr("Today")
            sign: "sign-today"
            current: tabs.here === "today"
            onClicked: tabs.chosen("today")
        }
        Tab {
            objectName: "tab-box"
            text: qsTr("Box")
            sign: "sign-box"
            current: tabs.here === "box"
            onClicked: tabs.chosen("box")
        }
        Tab {
            objectName: "tab-notebook"
            text: qsTr("Notebook")
            sign: "sign-notebook"
            current: tabs.here === "notebook"
            onClicked: tabs.chosen("notebook")
        }
        Tab {
            objectName: "tab-crew"
            text: qsTr("Crew")
            sign: "sign-crew"
            current: tabs.here === "crew"
            onClicked: tabs.chosen("crew")
        }
    }

    Component {
        id: problemScreen
        ProblemScreen { household: screens.household }
    }
    Component {
        id: welcomeScreen
        WelcomeScreen {
            household: screens.household
            onFinished: screens.begin()
        }
    }
    Component {
        id: resumeScreen
        ResumeScreen {
            playInHand: screens.playInHand
            onAnswered: screens.begin()
            onSomethingDifferent: screens.go("different")
        }
    }
    Component {
        id: todayScreen
        TodayScreen {
            id: today
            household: screens.household
            sitting: screens.sitting
            playInHand: screens.playInHand
            onRoomWanted: screens.go("room")
            onKiteWanted: screens.go("kite")
            onChooseWanted: screens.go("choose")
            onEverythingWanted: screens.go("everything")
            onFloorCheckWanted: screens.go("floor")
            onBoxWanted: screens.go("box")
            onPlayBegun: screens.go("play")
            onChildChosen: alias => {
                screens.household.child = alias
                screens.begin()
                today.reload()
            }
            foot: MainTabs {
                here: "today"
                onChosen: where => screens.go(where)
            }
        }
    }
    Component {
        id: roomScreen
        RoomScreen {
            household: screens.household
            sitting: screens.sitting
            onDone: screens.go("today")
            onHomeSheetWanted: screens.go("home-sheet")
        }
    }
    Component {
        id: everythingScreen
        EverythingScreen {
            household: screens.household
            sitting: screens.sitting
            playInHand: screens.playInHand
            onBack: screens.go("today")
            onPlayBegun: screens.go("play")
        }
    }
    Component {
        id: kiteScreen
        KiteScreen {
            household: screens.household
            sitting: screens.sitting
            onShown: kite => screens.go(kite === "whirling" || kite === "clouds" ? "together" : "today")
            onGrownUpWanted: screens.go("grown-up")
            onLeft: {
                screens.sitting.skipKite()
                screens.go("today")
            }
        }
    }
    Component {
        id: kiteAfterScreen
        KiteScreen {
            household: screens.household
            sitting: screens.sitting
            afterActivity: screens.afterActivity
            onShown: screens.go("today")
            onGrownUpWanted: screens.go("grown-up")
            onLeft: screens.go("today")
        }
    }
    Component {
        id: grownUpScreen
        GrownUpScreen {
            childName: screens.household.child
            onDone: screens.go("today")
        }
    }
    Component {
        id: togetherScreen
        TogetherScreen { onDone: screens.go("today") }
    }
    Component {
        id: chooseScreen
        ChooseFromToday {
            household: screens.household
            sitting: screens.sitting
            playInHand: screens.playInHand
            onPlayBegun: screens.go("play")
            onLeft: screens.go("today")
        }
    }
    Component {
        id: playScreen
        PlayScreen {
            household: screens.household
            playInHand: screens.playInHand
            onPutBackWanted: screens.go("putback")
            onBurst: screens.go("burst")
        }
    }
    Component {
        id: burstScreen
        BurstScreen {
            household: screens.household
            playInHand: screens.playInHand
            onDone: screens.go("putback")
        }
    }
    Component {
        id: putBackScreen
        PutBackScreen {
            household: screens.household
            playInHand: screens.playInHand
            onPlayWanted: {
                if (screens.playInHand.goOnPlaying())
                    screens.go("play")
            }
            onDifferentWanted: screens.go("different")
            onDone: activityId => {
                screens.afterActivity = activityId
                screens.go("noticed")
            }
        }
    }
    Component {
        id: differentScreen
        DifferentScreen {
            household: screens.household
            playInHand: screens.playInHand
            onBack: screens.playInHand.fromBefore ? screens.go("resume") : screens.go("putback")
            onFloorCheckWanted: screens.go("floor")
            onDone: activityId => {
                screens.afterActivity = activityId
                screens.go("noticed")
            }
        }
    }
    Component {
        id: floorScreen
        FloorScreen {
            household: screens.household
            onDone: screens.playInHand.active ? screens.go("different") : screens.go("today")
            onEmergencyWanted: screens.go("emergency")
        }
    }
    Component {
        id: emergencyScreen
        EmergencyScreen { onDone: screens.go("floor") }
    }
    Component {
        id: noticedScreen
        NoticedScreen {
            household: screens.household
            playInHand: screens.playInHand
            askKite: screens.sitting.kiteToComplete
            onDone: screens.go("today")
            onKiteWanted: screens.go("kite-after")
        }
    }
    Component {
        id: boxScreen
        BoxScreen {
            household: screens.household
            onCountWanted: screens.go("count")
            onFloorCheckWanted: screens.go("floor")
            foot: MainTabs {
                here: "box"
                onChosen: where => screens.go(where)
            }
        }
    }
    Component {
        id: countScreen
        CountScreen {
            household: screens.household
            onDone: screens.go("box")
        }
    }
    Component {
        id: notebookScreen
        NotebookScreen {
            household: screens.household
            foot: MainTabs {
                here: "notebook"
                onChosen: where => screens.go(where)
            }
        }
    }
    Component {
        id: crewScreen
        CrewScreen {
            household: screens.household
            onHomeSheetWanted: screens.go("home-sheet")
            onSettingsWanted: screens.go("settings")
            foot: MainTabs {
                here: "crew"
                onChosen: where => screens.go(where)
            }
        }
    }
    Component {
        id: homeSheetScreen
        HomeSheetScreen {
            household: screens.household
            onBack: screens.go("crew")
        }
    }
    Component {
        id: settingsScreen
        SettingsScreen {
            appearance: screens.appearance
            sitting: screens.sitting
            onBack: screens.go("crew")
        }
    }
}
