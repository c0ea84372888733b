pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Kite

/// The child's check-in: five answers of equal worth, and the hand. Never a scroll, one tap, the
/// same thanks for all. Nothing leads on from here but the control an adult holds (job.md C4).
/// Where the phone has a voice, the sign beside the question and a long touch on a picture say what
/// stands there.
FocusScope {
    id: screen

    required property Household household
    required property Sitting sitting
    required property Appearance appearance
    required property Voice voice
    property string afterActivity: ""
    property bool byAdult: false
    property string picked: ""
    property bool everyKite: false
    readonly property bool thanked: screen.picked.length > 0 && !kites.byAdult
    readonly property bool spoken: screen.voice.available && !kites.byAdult
    readonly property int longTouchMs: screen.spoken ? 1000 + screen.appearance.minimumTouchMs : 0

    /// An adult goes on from this kite.
    signal shown(string kite)
    signal grownUpWanted()
    /// An adult goes on, and nothing was shown.
    signal skipped()

    function tapped(kite: string) {
        if (pause.running)
            return
        pause.restart()
        screen.picked = kite
        kites.show(kite)
    }

    function answered(picture: string) {
        if (picture !== "hand")
            screen.tapped(picture)
        else if (!pause.running)
            screen.grownUpWanted()
    }

    /// What a switch has lit is said, where words are said without being asked for.
    function cue(picture: string, lit: bool) {
        if (lit && !kites.byAdult)
            kites.cue(picture)
    }

    function leave() {
        if (screen.picked.length > 0)
            screen.shown(screen.picked)
        else
            screen.skipped()
    }

    Keys.onEscapePressed: {}
    Keys.onBackPressed: {}
    Component.onCompleted: kites.ask()
    Component.onDestruction: screen.voice.stop()

    Said { text: !screen.thanked ? "" : pair.visible ? pair.text + " " + pair.thanks : question.text }

    KiteViewModel {
        id: kites

        household: screen.household
        sitting: screen.sitting
        voice: screen.voice
        aloud: screen.appearance.kiteAloud
        afterActivity: screen.afterActivity
        byAdult: screen.byAdult
    }

    // The second of two touches within 600 ms is ignored (checkin.md 10). What an adult taps for a
    // child needs no hold to go on from.
    Timer {
        id: pause

        interval: 600
        onTriggered: {
            if (kites.byAdult)
                screen.leave()
        }
    }

    // No answer is the good one: said after the thanks, so that it says nothing about this answer.
    Timer {
        interval: 3000
        running: screen.thanked && screen.afterActivity.length === 0 && screen.sitting.everyKiteDue
        onTriggered: screen.everyKite = true
    }

    KitePlaces {
        id: places

        width: screen.width
        height: screen.height
        questionHeight: Math.max(Theme.touchTarget + 1, question.implicitHeight + 2 * Theme.smallGap + (Theme.largeText || places.compact ? 0 : Theme.gap))
        mirrored: screen.LayoutMirroring.enabled
        held: Qt.size(heldControl.implicitWidth, heldControl.implicitHeight)
        speaker: speaker.visible ? speaker.width : 0
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Item {
        id: page

        anchors.fill: parent
        visible: !pair.visible

        FittingHeading {
            id: question

            objectName: "question"
            x: places.fromStart(places.questionStart, question.width)
            y: (places.questionHeight - height) / 2
            width: places.questionWidth
            roles: Theme.largeText ? [Theme.Label, Theme.TabWord] : [Theme.Question, Theme.Row, Theme.Strong, Theme.Caption]
            mostHeight: places.mostHeading
            text: screen.everyKite ? kites.everyKite()
                : screen.thanked ? kites.thanks()
                : kites.byAdult ? qsTr("Your guess: what is the kite doing?") : kites.question
        }

        Repeater {
            model: ["resting", "steady", "whirling"]

            KiteTile {
                id: tile

                required property string modelData
                required property int index

                objectName: "kite-" + tile.modelData
                x: places.kiteX(tile.index)
                y: places.kiteY(tile.index)
                width: places.kiteWidth
                height: places.kiteHeight
                upright: places.wide
                kite: tile.modelData
                text: kites.name(tile.modelData)
                note: places.wide ? "" : kites.note(tile.modelData)
                shortText: tile.modelData === "whirling" ? qsTr("Whirling") : tile.modelData === "steady" ? qsTr("Steady") : ""
                picked: screen.picked === tile.modelData
                minimumTouchMs: screen.appearance.minimumTouchMs
                longTouchMs: screen.longTouchMs
                onLitChanged: screen.cue(tile.modelData, tile.lit)
                onLingered: kites.readOne(tile.modelData)
                onChosen: screen.answered(tile.modelData)
            }
        }

        Repeater {
            model: ["clouds", "bag"]

            ChildTile {
                id: other

                required property string modelData
                required property int index

                objectName: "kite-" + other.modelData
                x: places.otherX(other.index)
                y: places.otherTop
                width: places.otherWidth
                height: places.otherHeight
                upright: true
                drawing: "kite-" + other.modelData
                text: places.wordless ? "" : kites.name(other.modelData)
                accessibleName: kites.name(other.modelData)
                picked: screen.picked === other.modelData
                minimumTouchMs: screen.appearance.minimumTouchMs
                longTouchMs: screen.longTouchMs
                onLitChanged: screen.cue(other.modelData, other.lit)
                onLingered: kites.readOne(other.modelData)
                onChosen: screen.answered(other.modelData)
            }
        }

        ChildTile {
            objectName: "hand"
            x: places.hand.x
            y: places.hand.y
            width: places.hand.width
            height: places.hand.height
            upright: !places.roomy
            wordsWidth: places.hand.width * 0.6
            drawing: "hand"
            text: places.roomy ? qsTr("I need a grown\u2011up") : places.wordless ? "" : qsTr("Grown-up")
            shortText: places.roomy ? qsTr("Grown-up") : ""
            accessibleName: qsTr("I need a grown-up")
            minimumTouchMs: screen.appearance.minimumTouchMs
            longTouchMs: screen.longTouchMs
            onLitChanged: screen.cue("hand", lit)
            onLingered: kites.readOne("hand")
            onChosen: screen.answered("hand")
        }

        SpeechButton {
            id: speaker

            objectName: "speaker"
            x: places.speakerX
            y: (places.top - height) / 2
            visible: screen.spoken && !(places.heldOnTop && screen.thanked)
            accessibleName: qsTr("Read aloud")
            onClicked: kites.readAll()
        }

        HeldAdultControl {
            id: heldControl

            objectName: "adultHold"
            x: places.heldAt.x
            y: places.heldAt.y
            beside: places.compact !== places.heldOnTop
            low: Theme.largeText
            text: Theme.largeText ? qsTr("hold") : qsTr("adult: hold")
            Accessible.name: qsTr("adult: hold")
            onHeld: screen.leave()
        }
    }

    BeforeAndNow {
        id: pair

        objectName: "beforeAndNow"
        anchors.fill: parent
        visible: screen.afterActivity.length > 0 && screen.thanked
        before: screen.sitting.kiteBefore
        now: screen.picked
        text: Array.from(kites.beforeAndNow(screen.sitting.kiteBefore, screen.picked)).join("\n")
        thanks: kites.thanks()
        onHeld: screen.leave()
    }
}
