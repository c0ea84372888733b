pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Play

/// One activity: cautions first, one picture, one step at a time. After ten quiet seconds only the
/// picture is left; any touch brings the words back.
Sheet {
    id: screen

    required property Household household
    required property PlayInHand playInHand
    required property Voice voice
    /// The kite waits in the corner, for the child to find.
    property bool kiteInCorner: false
    /// Somebody listens to the page, or goes through it with a switch: it stays open.
    property bool staysOpen: false
    property bool quiet: false
    property Item placeKept: null
    property bool more: false
    property int quietAfterMs: 10000
    /// Long cautions would leave no room for the picture: the lead stands above it, the rest below.
    readonly property bool leadAlone: Theme.largeText || Theme.lowPage || play.inTwoLanguages
    readonly property bool lastStep: play.step + 1 >= play.stepCount

    signal putBackWanted()
    signal burst()
    signal emergencyWanted()
    signal kiteFound()
    signal otherChildWanted()

    function goQuiet() {
        screen.placeKept = screen.focused
        screen.quiet = true
    }

    function wake() {
        screen.quiet = false
        if (screen.placeKept)
            screen.placeKept.forceActiveFocus()
    }

    margin: Theme.margin
    covered: screen.quiet
    news: qsTr("Step %1 of %2. %3").arg(play.step + 1).arg(play.stepCount).arg(play.stepText)
    onFocusedChanged: idle.restart()

    Component.onDestruction: screen.voice.stop()

    PlayViewModel {
        id: play

        household: screen.household
        playInHand: screen.playInHand
    }

    header: TitleBar {
        text: play.name
        backName: play.step > 0 ? qsTr("One step back") : ""
        onBack: screen.playInHand.goToStep(play.step - 1)

        KiteCorner {
            objectName: "kiteCorner"
            visible: screen.kiteInCorner
            onFound: screen.kiteFound()
        }
    }

    FullBleed {
        sheetMargin: screen.margin
        sheetWidth: screen.width

        Column {
            id: cautions

            width: parent.width

            LabelStrip {
                width: parent.width
                words: play.step === 0 ? play.labelWords : []
                source: play.labelSource
            }

            CautionStrip {
                width: parent.width
                lead: play.lead
                text: play.cautions
                whole: !screen.leadAlone
            }
        }
    }

    Repeater {
        model: play.swapLines

        Card {
            id: swap

            required property string modelData

            width: screen.contentWidth

            Words {
                width: parent.width
                role: Theme.Label
                text: qsTr("Here, instead")
            }

            Words {
                width: parent.width
                role: Theme.Body
                text: swap.modelData
            }
        }
    }

    LookFirst {
        id: lookFirst

        objectName: "lookFirst"
        width: screen.contentWidth
        visible: play.step === 0 && lookFirst.lines.length > 0
        lines: screen.playInHand.lookFirst
        onLookedOver: screen.playInHand.lookedOver()
    }

    StepPage {
        width: screen.contentWidth
        margin: screen.margin
        lift: play.swapLines.length > 0 || lookFirst.visible ? 0 : screen.spacing
        room: screen.middleHeight - cautions.height
        drawing: play.drawing
        drawingAlt: play.drawingAlt
        step: play.step
        stepCount: play.stepCount
        text: play.stepText
        readable: screen.voice.available
        speaking: screen.voice.speaking
        onReadWanted: screen.voice.read([play.stepText])

        // Said before anything is done: above the step, wherever the page is cut.
        InviteLine {
            width: parent ? parent.width : implicitWidth
            visible: play.step === 0
            text: play.invite
            readable: screen.voice.available
            speaking: screen.voice.speaking
            onReadWanted: screen.voice.read([play.invite])
        }
    }

    FullBleed {
        visible: screen.leadAlone
        sheetMargin: screen.margin
        sheetWidth: screen.width

        CautionStrip {
            objectName: "restOfCautions"
            width: parent ? parent.width : implicitWidth
            visible: text.length > 0
            whole: true
            text: screen.leadAlone ? play.cautions : ""
        }
    }

    Words {
        objectName: "gradingNote"
        width: screen.contentWidth
        visible: text.length > 0
        role: Theme.Reason
        soft: true
        text: play.gradingNote
    }

    Pair {
        width: screen.contentWidth

        GradeCard {
            objectName: "easier"
            sign: "sign-easier"
            text: qsTr("Easier")
            note: play.easier
            chosen: play.way === "easier"
            onClicked: screen.playInHand.tapGrading("easier")
        }

        GradeCard {
            objectName: "harder"
            sign: "sign-harder"
            text: qsTr("Harder")
            note: play.harder
            chosen: play.way === "harder"
            onClicked: screen.playInHand.tapGrading("harder")
        }
    }

    OurWayLine {
        id: ourWay

        objectName: "ourWayLine"
        width: screen.contentWidth
        playInHand: screen.playInHand
    }

    Words {
        width: screen.contentWidth
        visible: play.step === 0
        role: Theme.Body
        soft: true
        text: play.adultLine
    }

    Words {
        objectName: "writtenBy"
        width: screen.contentWidth
        visible: play.step === 0 && text.length > 0
        role: Theme.Reason
        soft: true
        text: play.writtenBy
    }

    StitchedLink {
        objectName: "more"
        text: screen.more ? qsTr("Less") : qsTr("More about this")
        onClicked: screen.more = !screen.more
    }

    PlayDetails {
        width: screen.contentWidth
        visible: screen.more
        say: play.say
        watchFor: play.watchFor
        waysIn: play.waysIn
        cautions: play.allCautions
    }

    StitchedLink {
        objectName: "otherChild"
        visible: screen.household.several
        text: qsTr("Another child's box")
        onClicked: screen.otherChildWanted()
    }

    foot: PlayFoot {
        balloon: play.balloon
        text: screen.lastStep ? qsTr("Put back") : qsTr("Next step")
        onForward: {
            if (screen.lastStep) {
                if (screen.playInHand.startPuttingBack())
                    screen.putBackWanted()
            } else {
                screen.playInHand.goToStep(play.step + 1)
                screen.toTop()
            }
        }
        onStopped: {
            if (screen.playInHand.startPuttingBack())
                screen.putBackWanted()
        }
        onBurst: screen.burst()
        onWrong: screen.emergencyWanted()
    }

    QuietPicture {
        parent: screen
        width: screen.width
        height: screen.height
        drawing: play.drawing
        alt: play.drawingAlt
        name: play.name
        shown: screen.quiet
        onWoken: screen.wake()
    }

    Timer {
        id: idle

        running: !screen.quiet && !screen.staysOpen && screen.visible && !ourWay.writing && !Theme.largeText
        interval: screen.quietAfterMs
        onTriggered: screen.goQuiet()
    }
}
