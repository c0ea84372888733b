pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Every route of the app. A screen says what is wanted; its route answers with the next one. A
/// route is loaded when it is gone to, never before.
FocusScope {
    id: screens

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand
    required property Appearance appearance
    required property Reminders reminders
    required property Voice voice
    required property CrewLife crewLife
    property string route: ""
    property string afterActivity: "" ///< What was just put back: for the after-kite.
    /// Where the floor check, the words for an emergency and the take-out list lead back to.
    property string floorBack: "today"
    property alias emergencyBack: ways.emergency
    property alias takeOutBack: ways.takeOut
    /// The item whose page stands open, and where its page, and that of a dried-out one, lead back to.
    property string item: ""
    property string searched: "" ///< Under Everything, while such a page stands open.
    property alias itemBack: ways.item
    property alias driedOutBack: ways.driedOut
    property int togetherCard: 0 ///< The card for the adult that the breaths lead back to.
    /// What is known to have gone wrong when the words for an emergency open; empty: not yet said.
    property string trouble: ""
    property string problem: ""
    property alias notedBack: ways.noted ///< Where what was noted today leads back to.
    /// Whose phone is about to be taken out of the crew.
    property string member: ""
    property string memberName: ""
    /// The goal whose words or level are looked at; empty: a new one. Where the goals lead back to.
    property string goal: ""
    property alias goalsBack: ways.goals
    readonly property alias bench: bench ///< What of the workbench's own things stands open.
    property alias placeBack: ways.place ///< Where the page about the shared place leads back to.
    /// What is being looked at before it is printed (mobile/prints/print_job.h), and where the page of
    /// all prints leads back to.
    property string print: "lid-list"
    property alias printsBack: ways.prints
    readonly property Item current: loader.item as Item
    readonly property alias slip: justNoted
    /// Where the app begins, and where the pages lead back to.
    readonly property string firstPlace: screens.household.therapist ? "workbench" : "today"
    /// There is room for the board, or for the list that a page is one of, beside the page.
    readonly property bool twoPanes: screens.household.therapist && !screens.household.withoutBoxes && screens.width >= Theme.twoPanesWidth
    readonly property string listBeside: screens.twoPanes && !screens.household.needsWelcome ? bench.listBefore(screens.route) : ""

    function go(where: string) {
        screens.problem = ""
        justNoted.pageTurned()
        const there = where === "today" ? screens.firstPlace : where
        screens.route = there === "workbench" && screens.twoPanes ? "box-of-child" : there
        place.last = null
        loader.setSource(Qt.resolvedUrl(pages.fileOf(screens.route)), { screens: screens })
    }

    function lookOnTheFloor(from: string) {
        screens.floorBack = from
        screens.go("floor")
    }

    function callForHelp(from: string, trouble: string) {
        screens.emergencyBack = from
        screens.trouble = trouble
        screens.go("emergency")
    }

    function showNoted(from: string) {
        screens.notedBack = from
        screens.go("noted")
    }

    function showPrints(from: string) {
        screens.printsBack = from
        screens.go("prints")
    }

    function takeOut(from: string) {
        screens.takeOutBack = from
        screens.go("take-out")
    }

    function showItem(item: string) {
        screens.item = item
        screens.itemBack = screens.route
        screens.go("item")
    }

    function showBoxOf(child: string) {
        screens.household.child = child
        screens.go("box-of-child")
    }

    function driedOut(item: string) {
        screens.item = item
        screens.driedOutBack = screens.route
        screens.go("dried-out")
    }

    function showGoals(from: string) {
        screens.goalsBack = from
        screens.go("goals")
    }

    function showGoal(where: string, goal: string) {
        screens.goal = goal
        screens.go(where)
    }

    /// Nothing of the box is left to be put back: the play ends by itself, and others are offered.
    function thrownAway() {
        if (screens.playInHand.active && (screens.playInHand.countFirst.length > 0 || !screens.playInHand.stop()))
            screens.go("putback")
        else
            screens.go("today")
    }

    /// Where a start, or another child, begins.
    function begin() {
        if (screens.household.problem.length > 0)
            screens.go("problem")
        else if (screens.household.accessEnded())
            screens.go("ended")
        else if (screens.household.needsWelcome)
            screens.go(screens.crewLife.joining ? "join" : "welcome")
        else if (screens.playInHand.active && screens.playInHand.fromBefore)
            screens.go("resume")
        else if (screens.playInHand.active)
            screens.go(screens.playInHand.puttingBack ? "putback" : "play")
        else
            screens.go("today")
    }

    /// From a kite on: back to the play in hand, where the child found it in the corner; else the
    /// adult first, where a child may need one to borrow calm from (checkin.md 5). Empty: none shown.
    function goOnFrom(kite: string) {
        screens.togetherCard = 0
        if (screens.playInHand.active)
            screens.go("play")
        else
            screens.go(kite === "whirling" || kite === "clouds" ? "together" : "today")
    }

    /// Another child, and with it perhaps another family: nothing of the one before is taken along. A
    /// play that waits there is asked about first.
    function chooseChild(file: string, alias: string) {
        if (!screens.household.chooseChild(file, alias))
            return
        screens.forgetWhere()
        if (screens.playInHand.active)
            screens.go("resume")
        else
            screens.begin()
    }

    function forgetWhere() {
        screens.afterActivity = ""
        screens.item = ""
        screens.goal = ""
        screens.searched = ""
        screens.trouble = ""
        screens.togetherCard = 0
    }

    function goBack() {
        screens.leave(screens.route)
    }

    /// Back from a page, or from the list beside one.
    function leave(page: string) {
        const where = bench.backFrom(page)
        if (page === "noted")
            second.goOn(where)
        else if (where.length > 0)
            screens.go(where)
    }

    /// The app is looked at again: what has grown old is asked anew.
    function wake() {
        screens.sitting.freshen()
        if (screens.route === "play" || screens.route === "putback" || screens.household.accessEnded())
            screens.begin()
    }

    // The window was made wider: the board is beside the page from now on.
    onTwoPanesChanged: if (screens.twoPanes && screens.route === "workbench") screens.go("workbench")
    Component.onCompleted: screens.begin()

    FocusPlace { id: place }
    PageNames { id: pages }
    OnTheBench { id: bench; others: ways }

    SecondThought {
        id: second

        playInHand: screens.playInHand
        onBegun: screens.begin()
        onWanted: where => { if (where !== screens.route) screens.go(where) }
    }
    BackWays {
        id: ways
        crew: bench.crewPage
        puttingBack: screens.playInHand.puttingBack
        therapist: screens.household.therapist
    }

    Keys.onEscapePressed: screens.goBack()
    Keys.onBackPressed: event => {
        event.accepted = screens.route !== screens.firstPlace
        screens.goBack()
    }

    Connections {
        target: screens.household

        function onProblemChanged() {
            screens.begin()
        }

        // What a view model has told a screen was said in the language before.
        function onLanguageChanged() {
            screens.go(screens.route)
        }
    }

    Failures {
        household: screens.household
        sitting: screens.sitting
        playInHand: screens.playInHand
        crewLife: screens.crewLife
        onFailed: problem => screens.problem = problem
    }

    Rectangle { anchors.fill: parent; color: Theme.sheet }
    WhosePage {
        id: whose

        width: screens.width
        household: screens.household
        route: screens.route
    }

    FailureNote {
        id: failed

        y: whose.height
        width: screens.width
        most: screens.height * 0.4
        text: screens.problem
        actionText: loader.status === Loader.Error ? qsTr("Back to today") : qsTr("Put away")
        onAction: loader.status === Loader.Error ? screens.go("today") : screens.problem = ""
    }
    BoardPane {
        id: boardPane

        anchors.left: parent.left
        host: screens
        list: screens.listBeside
        held: loader.unsaved
        y: loader.y
        height: loader.height
    }

    PageLoader {
        id: loader

        roomStart: screens.LayoutMirroring.enabled ? 0 : boardPane.width
        room: screens.width - boardPane.width
        y: whose.height + failed.height
        height: screens.height - loader.y - justNoted.height
        fromTheLeft: screens.LayoutMirroring.enabled
        onLoaded: place.arriveOn(screens.current)
        onStatusChanged: {
            if (loader.status === Loader.Error)
                screens.problem = qsTr("This page could not be opened. Nothing was changed.")
        }
    }

    JustNotedSlip {
        id: justNoted

        objectName: "justNoted"
        x: loader.start
        width: loader.width
        anchors.bottom: parent.bottom
        household: screens.household
        adultPage: pages.forAdults.includes(screens.route)
        onSecondThought: second.goOn(screens.route)
        onFailed: problem => screens.problem = problem
    }
}
