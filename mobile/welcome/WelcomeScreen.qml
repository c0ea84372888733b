pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Welcome

/// First run, of the phone or of a further family: three questions and the lid list, one page each. No account.
Sheet {
    id: screen

    required property Household household
    /// A further family's box on a phone that has one.
    property bool another: false
    /// Whose box came by a code, where nobody has said yet who lives in this home; empty: another
    /// first run.
    property string joinedBy: ""
    readonly property bool joined: screen.joinedBy.length > 0
    property int page: 0
    readonly property int lastPage: screen.joined ? 2 : 3
    readonly property string missing: screen.joined ? "" : screen.page === 0 && welcome.childName.length === 0 ? qsTr("A name first; a letter will do.")
                                    : screen.page === 1 && welcome.adultName.length === 0 ? qsTr("Your name first; a letter will do.") : ""

    signal finished()
    /// Somebody of a crew has shown a code.
    signal codeWanted()
    /// Whoever holds the phone packs boxes for children.
    signal clinicWanted()
    /// Back from the first page, where there is something to go back to.
    signal wentBack()

    function next() {
        home.takeIn()
        if (screen.page < screen.lastPage) {
            screen.page += 1
            screen.turn()
        } else if (screen.joined ? welcome.finishHome() : screen.another ? welcome.finishAnother() : welcome.finish()) {
            screen.finished()
        }
    }

    function back() {
        if (screen.page === 0) {
            screen.wentBack()
            return
        }
        screen.page -= 1
        screen.turn()
    }

    function turn() {
        screen.toTop()
        bar.readOut()
    }

    /// The phone's own back key goes the same way; from the first page of a first run, nowhere.
    function backByKey(event: KeyEvent) {
        event.accepted = screen.page > 0 || screen.another
        if (event.accepted)
            screen.back()
    }

    Keys.onBackPressed: event => screen.backByKey(event)
    Keys.onEscapePressed: event => screen.backByKey(event)

    WelcomeViewModel {
        id: welcome

        household: screen.household
        Component.onCompleted: welcome.load()
    }

    header: TitleBar {
        id: bar

        text: screen.page === 0 ? screen.joined ? qsTr("How old is %1?").arg(screen.joinedBy) : qsTr("A box has come") : screen.page === 1 ? qsTr("Who else is at home?")
              : screen.page === 2 ? qsTr("What must stay away?") : qsTr("What lies in the box?")
        backName: screen.page > 0 ? qsTr("One page back") : screen.another ? qsTr("Back to the crew") : ""
        onBack: screen.back()
    }

    StepMarks {
        width: screen.contentWidth
        count: screen.lastPage + 1
        current: screen.page
        text: qsTr("Page %1 of %2").arg(Numerals.of(screen.page + 1)).arg(Numerals.of(screen.lastPage + 1))
    }

    ProblemNote {
        width: screen.contentWidth
        text: welcome.problem
    }

    LinkRow {
        objectName: "haveACode"
        width: screen.contentWidth
        visible: screen.page === 0 && !screen.another && !screen.joined
        sign: "sign-crew"
        text: qsTr("I have a code")
        note: qsTr("From somebody who has this box on their phone")
        onClicked: screen.codeWanted()
    }

    ChildPage {
        width: screen.contentWidth
        visible: screen.page === 0
        named: screen.joined
        answers: welcome
    }

    StitchedLink {
        objectName: "packsBoxes"
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        visible: screen.page === 0 && !screen.another && !screen.joined
        text: qsTr("I am a therapist: I pack boxes for children")
        onClicked: screen.clinicWanted()
    }

    HomePage {
        id: home

        width: screen.contentWidth
        visible: screen.page === 1
        named: screen.joined
        answers: welcome
    }

    AwayPage {
        width: screen.contentWidth
        visible: screen.page === 2
        answers: welcome
    }

    LidListPage {
        width: screen.contentWidth
        visible: screen.page === 3
        answers: welcome
    }

    Words {
        objectName: "reviewNotice"
        width: screen.contentWidth
        visible: screen.page === screen.lastPage && text.length > 0
        role: Theme.Reason
        text: screen.household.reviewNotice
    }

    foot: ActionFoot {
        text: screen.page < screen.lastPage ? qsTr("Go on") : qsTr("Begin")
        notNowReason: screen.missing
        otherText: screen.joined ? qsTr("Later") : ""
        onClicked: screen.next()
        onOtherClicked: screen.finished()
    }
}
