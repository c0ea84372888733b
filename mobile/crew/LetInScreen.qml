pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// Letting somebody in: whom, then a code in words and squares, then an adult's word on who came.
Sheet {
    id: screen

    required property CrewLife crewLife
    readonly property bool ready: screen.crewLife.place.length > 0 && screen.crewLife.agreed

    property Item more: null

    signal back()
    signal placeWanted()

    function footText(): string {
        switch (letting.stage) {
        case LettingIn.Whom: return qsTr("Make a code")
        case LettingIn.Over: return qsTr("A new code")
        default: return qsTr("Done")
        }
    }

    news: letting.stage === LettingIn.Knocked ? qsTr("Somebody is here: %1").arg(letting.newcomer)
        : letting.stage === LettingIn.In ? qsTr("%1 is in").arg(letting.newcomer)
        : letting.stage === LettingIn.Over ? qsTr("The code has ended") : ""

    LettingIn {
        id: letting

        crew: screen.crewLife
        onStageChanged: screen.toTop()
    }

    Timer {
        id: laidOut

        interval: 0
        onTriggered: screen.showItem(screen.more)
    }

    header: TitleBar {
        text: qsTr("Let somebody in")
        backName: qsTr("Back to the crew")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: letting.problem
    }

    Card {
        width: screen.contentWidth
        visible: !screen.ready
        spacing: Theme.gap

        Words {
            width: parent.width
            text: qsTr("First the phones need a place where they leave what they share, and your yes to it.")
        }

        PaperButton {
            objectName: "choosePlace"
            width: parent.width
            patch: true
            text: qsTr("Choose a shared place")
            onClicked: screen.placeWanted()
        }
    }

    Whom {
        width: screen.contentWidth
        visible: screen.ready && letting.stage === LettingIn.Whom
        letting: letting
        onShown: item => {
            screen.more = item
            laidOut.restart()
        }
    }

    CodeShown {
        width: screen.contentWidth
        visible: letting.stage === LettingIn.Shown
        letting: letting
    }

    SomebodyKnocks {
        width: screen.contentWidth
        visible: letting.stage === LettingIn.Knocked
        letting: letting
    }

    Words {
        objectName: "letInDone"
        width: screen.contentWidth
        visible: letting.stage === LettingIn.In
        role: Theme.Heading
        text: qsTr("%1 is in. What they may see is on its way to that phone.").arg(letting.newcomer)
    }

    Words {
        width: screen.contentWidth
        visible: letting.stage === LettingIn.Over
        role: Theme.Heading
        text: qsTr("The code has ended, and nobody came in by it. A new one takes one tap.")
    }

    foot: ActionFoot {
        visible: screen.ready && letting.stage !== LettingIn.Knocked && letting.stage !== LettingIn.Shown
        height: visible ? implicitHeight : 0
        text: screen.footText()
        notNowReason: letting.busy ? qsTr("One moment.")
                    : letting.stage === LettingIn.Whom && letting.part.length === 0 ? qsTr("Whom first.") : ""
        onClicked: letting.stage === LettingIn.In ? screen.back() : letting.makeCode()
    }
}
