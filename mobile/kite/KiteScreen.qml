pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Kite

/// The child's check-in: five answers of equal worth, and the hand. Never a scroll, one tap, the
/// same thanks for all. Nothing leads on from here but the control an adult holds (job.md C4).
FocusScope {
    id: screen

    required property Household household
    required property Sitting sitting
    property string afterActivity: ""
    property bool byAdult: false
    property string picked: ""
    readonly property bool thanked: screen.picked.length > 0 && !kites.byAdult

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

    function leave() {
        if (screen.picked.length > 0)
            screen.shown(screen.picked)
        else
            screen.skipped()
    }

    Keys.onEscapePressed: {}
    Keys.onBackPressed: {}

    KiteViewModel {
        id: kites

        household: screen.household
        sitting: screen.sitting
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

    KitePlaces {
        id: places

        width: screen.width
        height: screen.height
        questionHeight: Math.max(Theme.touchTarget + 1, question.implicitHeight + 2 * Theme.smallGap + question.y)
        mirrored: screen.LayoutMirroring.enabled
        held: Qt.size(heldControl.width, heldControl.height)
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Words {
        id: question

        objectName: "question"
        x: places.fromStart(Theme.margin + 2, question.width)
        y: Theme.gap
        width: screen.width - 2 * Theme.margin - 4 - (places.heldOnTop ? heldControl.width : 0)
        role: Theme.largeText ? Theme.Label : Theme.Question
        strong: true
        heading: true
        text: screen.thanked ? kites.thanks()
            : kites.byAdult ? qsTr("Your guess: what is the kite doing?")
            : screen.afterActivity.length > 0 ? qsTr("What is your kite doing now?") : qsTr("What is your kite doing?")
    }

    Repeater {
        model: ["resting", "steady", "whirling"]

        ChildTile {
            id: tile

            required property string modelData
            required property int index

            objectName: "kite-" + tile.modelData
            x: places.kiteX(tile.index)
            y: places.kiteY(tile.index)
            width: places.kiteWidth
            height: places.kiteHeight
            upright: places.wide
            drawing: "kite-" + tile.modelData
            text: kites.name(tile.modelData)
            note: places.wide ? "" : kites.note(tile.modelData)
            shortText: tile.modelData === "whirling" ? qsTr("Whirling") : tile.modelData === "steady" ? qsTr("Steady") : ""
            picked: screen.picked === tile.modelData
            onChosen: screen.tapped(tile.modelData)
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
            onChosen: screen.tapped(other.modelData)
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
        accessibleName: qsTr("I need a grown-up")
        onChosen: {
            if (!pause.running)
                screen.grownUpWanted()
        }
    }

    HeldAdultControl {
        id: heldControl

        objectName: "adultHold"
        x: places.heldAt.x
        y: places.heldAt.y
        beside: places.compact && !places.heldOnTop
        text: Theme.largeText ? qsTr("hold") : qsTr("adult: hold")
        Accessible.name: qsTr("adult: hold")
        onHeld: screen.leave()
    }

    BeforeAndNow {
        objectName: "beforeAndNow"
        anchors.fill: parent
        visible: screen.afterActivity.length > 0 && screen.thanked
        before: screen.sitting.kiteBefore
        now: screen.picked
        text: kites.beforeAndNow(screen.sitting.kiteBefore, screen.picked)
        thanks: kites.thanks()
        onHeld: screen.leave()
    }
}
