pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Kite

/// The child's check-in: five answers of equal worth, and the hand. Never a scroll, one tap, the
/// same thanks for all; an adult leaves by holding.
FocusScope {
    id: screen

    required property Household household
    required property Sitting sitting
    property string afterActivity: ""
    property bool adultGuess: false

    signal shown(string kite)
    signal grownUpWanted()
    signal left()

    readonly property bool wide: screen.width > screen.height
    readonly property bool compact: !screen.wide && screen.height < 690
    readonly property int side: Theme.childMargin
    readonly property int gap: screen.wide ? Theme.chipGap : Theme.childGap
    readonly property int heldHeight: screen.compact || screen.wide ? Theme.touchTarget : Theme.mm(12)
    readonly property int questionHeight: Math.max(49, question.implicitHeight + Theme.gap)
    readonly property int thirdRow: screen.compact || screen.wide ? Math.max(Theme.mm(12), 80) : tileHeight
    readonly property int tileHeight: {
        const room = screen.height - screen.questionHeight - screen.side
        if (screen.wide)
            return Math.max(Theme.mm(16), room - screen.thirdRow - 2 * screen.gap)
        const below = screen.compact ? Math.max(Theme.mm(12), 80) + screen.gap + screen.heldHeight + Theme.gap
                                     : screen.heldHeight + 2 * screen.gap
        const most = Math.floor((room - below - 3 * screen.gap) / (screen.compact ? 3 : 4))
        return Math.min(Theme.mm(20) + 12, most)
    }

    // Escape and the back key stay here: the way out is held (job.md C4).
    Keys.onEscapePressed: {}
    Keys.onBackPressed: {}

    function tapped(kite: string) {
        if (thanks.running)
            return
        kites.show(kite, screen.adultGuess || kites.adultShows)
        screen.pickedKite = kite
        thanks.start()
    }

    property string pickedKite: ""

    KiteViewModel {
        id: kites

        household: screen.household
        sitting: screen.sitting
        afterActivity: screen.afterActivity
    }

    // The second of two touches within 600 ms is ignored; then the screen goes on by itself.
    Timer {
        id: thanks

        interval: 1200
        onTriggered: screen.shown(screen.pickedKite)
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Words {
        id: question

        x: screen.side + 6
        y: Theme.gap
        width: screen.width - 2 * screen.side - 12
        role: Theme.Question
        heading: true
        text: thanks.running ? kites.thanks()
              : screen.afterActivity.length > 0 ? qsTr("What is your kite doing now?") : qsTr("What is your kite doing?")
    }

    Repeater {
        model: ["resting", "steady", "whirling"]

        ChildTile {
            id: tile

            required property string modelData
            required property int index

            objectName: "kite-" + tile.modelData
            x: screen.side + (screen.wide ? tile.index * (tile.width + screen.gap) : 0)
            y: screen.questionHeight + (screen.wide ? 0 : tile.index * (screen.tileHeight + screen.gap))
            width: screen.wide ? (screen.width - 2 * screen.side - 2 * screen.gap) / 3 : screen.width - 2 * screen.side
            height: screen.tileHeight
            upright: screen.wide
            drawing: "kite-" + tile.modelData
            text: kites.name(tile.modelData)
            note: screen.wide ? "" : kites.note(tile.modelData)
            shortText: tile.modelData === "whirling" ? qsTr("Whirling") : tile.modelData === "steady" ? qsTr("Steady") : ""
            picked: screen.pickedKite === tile.modelData
            onChosen: screen.tapped(tile.modelData)
        }
    }

    Repeater {
        model: ["clouds", "bag"]

        ChildTile {
            id: other

            required property string modelData
            required property int index
            readonly property int inRow: screen.compact || screen.wide ? 3 : 2

            objectName: "kite-" + other.modelData
            x: screen.side + other.index * (other.width + screen.gap)
            y: screen.questionHeight + (screen.wide ? 1 : 3) * (screen.tileHeight + screen.gap)
            width: (screen.width - 2 * screen.side - (other.inRow - 1) * screen.gap - (screen.wide ? heldControl.width + screen.gap : 0)) / other.inRow
            height: screen.thirdRow
            upright: true
            drawing: "kite-" + other.modelData
            text: kites.name(other.modelData)
            picked: screen.pickedKite === other.modelData
            onChosen: screen.tapped(other.modelData)
        }
    }

    ChildTile {
        id: hand

        readonly property bool besideOthers: screen.compact || screen.wide

        objectName: "hand"
        x: screen.side + (hand.besideOthers ? 2 * (hand.width + screen.gap) : 0)
        y: hand.besideOthers ? screen.questionHeight + (screen.wide ? 1 : 3) * (screen.tileHeight + screen.gap)
                             : screen.height - screen.side - screen.heldHeight
        width: hand.besideOthers
               ? (screen.width - 2 * screen.side - 2 * screen.gap - (screen.wide ? heldControl.width + screen.gap : 0)) / 3
               : screen.width - 2 * screen.side - heldControl.width - Theme.sectionGap
        height: hand.besideOthers ? screen.thirdRow : screen.heldHeight
        upright: hand.besideOthers
        wordsWidth: hand.width * 0.62
        drawing: "hand"
        text: hand.besideOthers ? qsTr("Grown-up") : qsTr("I need a grown-up")
        accessibleName: qsTr("I need a grown-up")
        onChosen: screen.grownUpWanted()
    }

    HeldAdultControl {
        id: heldControl

        objectName: "adultHold"
        x: screen.width - width - screen.side
        y: screen.wide ? hand.y + (hand.height - height) / 2
                       : screen.height - height - (screen.compact ? 2 : screen.side)
        beside: screen.compact
        text: qsTr("adult: hold")
        onHeld: screen.left()
    }
}
