pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// The box as a tray: each item in its own well, how many, and what needs a look. Over it only what
/// needs somebody today.
Sheet {
    id: screen

    required property Household household
    required property Sitting sitting
    readonly property real inset: Theme.margin - screen.margin

    signal countWanted()
    signal floorCheckWanted()
    signal takeOutWanted()
    signal itemWanted(string itemId)
    signal requestsWanted()
    signal notedWanted()
    signal printsWanted()

    margin: Theme.gap

    BoxViewModel {
        id: box

        household: screen.household
        sitting: screen.sitting
    }

    ScreenTitle {
        x: screen.inset
        width: screen.contentWidth - 2 * screen.inset
        text: qsTr("%1's box").arg(screen.household.childTitle)
        under: box.placeWords
        endNote: box.revisionWords
    }

    ProblemNote {
        width: screen.contentWidth
        text: box.problem
        actionText: qsTr("Try again")
        onAction: box.load()
    }

    CautionButton {
        width: screen.contentWidth
        visible: box.floorNote
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "A small piece may lie on the floor. Look now."))
        onClicked: screen.floorCheckWanted()
    }

    CautionButton {
        objectName: "mustLeave"
        width: screen.contentWidth
        visible: box.mustLeave
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Some things must leave the house. See which."))
        onClicked: screen.takeOutWanted()
    }

    Card {
        objectName: "lid"
        width: screen.contentWidth
        visible: box.lidWords.length > 0
        spacing: Theme.chipGap

        Words {
            width: parent.width
            role: Theme.Label
            text: box.lidWords
        }

        Words {
            width: parent.width
            role: Theme.Body
            visible: text.length > 0
            text: box.whyWords
        }

        Words {
            width: parent.width
            role: Theme.Body
            visible: text.length > 0
            text: box.onTheWay
        }

        StitchedLink {
            objectName: "printLid"
            anchors.left: parent.left
            width: Math.min(implicitWidth, parent.width)
            visible: !screen.household.guest
            text: qsTr("Print the new list")
            onClicked: screen.printsWanted()
        }

        StitchedLink {
            objectName: "lidIsNew"
            anchors.left: parent.left
            width: Math.min(implicitWidth, parent.width)
            visible: !screen.household.guest
            text: qsTr("The new list is on the lid")
            onClicked: box.sayLidIsNew()
        }
    }

    QuestionCards {
        width: screen.contentWidth
        household: screen.household
        asking: true
        visible: !screen.household.guest && count > 0
    }

    LinkRow {
        objectName: "countDue"
        width: screen.contentWidth
        visible: box.countDue && !screen.household.guest
        sign: "sign-count"
        text: qsTr("Count it all together")
        note: qsTr("The last count was a month ago.")
        onClicked: screen.countWanted()
    }

    EmptyState {
        width: screen.contentWidth
        visible: box.count === 0 && box.problem.length === 0
        drawing: "item-box"
        text: qsTr("Nothing on the lid list")
        note: qsTr("Play needs nothing from the box, then. Count again when something has come.")
    }

    Tray {
        width: screen.contentWidth
        visible: box.count > 0

        LongestWord {
            id: longest

            font: Theme.font(Theme.Caption, false, Theme.textScale, Theme.arabicScript)
            text: box.names
        }

        WellRow {
            id: wells

            readonly property bool threeFit: longest.room + 16 <= (screen.contentWidth - 26 - 2 * wells.spacing) / 3

            columns: Theme.largeText ? 1 : screen.contentWidth > 560 ? 5 : wells.threeFit ? 3 : 2

            Repeater {
                model: box

                TrayWell {
                    id: well

                    required property string itemId
                    required property string name
                    required property string countText
                    required property bool none
                    required drawing
                    required tag

                    objectName: "well-" + well.itemId
                    text: well.name
                    count: well.countText
                    look: well.none ? CountChip.None : well.tag.length > 0 ? CountChip.NeedsLook : CountChip.Plain
                    accessibleName: well.name + ", " + well.countText + (well.tag.length > 0 ? ", " + well.tag : "")
                    onClicked: screen.itemWanted(well.itemId)
                }
            }
        }
    }

    QuestionCards {
        width: screen.contentWidth
        household: screen.household
        asking: false
    }

    Words {
        objectName: "notHere"
        x: screen.inset
        width: screen.contentWidth - 2 * screen.inset
        visible: screen.sitting.boxNotHere
        role: Theme.Reason
        soft: true
        text: qsTr("Said on this phone: not here. Only games that need nothing from the box are offered.")
    }

    LinkRow {
        objectName: "requests"
        width: screen.contentWidth
        visible: box.count > 0 && !screen.household.guest
        sign: "sign-box"
        text: qsTr("What to ask for")
        note: box.requestWords
        onClicked: screen.requestsWanted()
    }

    LinkRow {
        objectName: "noted"
        width: screen.contentWidth
        sign: "sign-notebook"
        text: qsTr("Noted today")
        onClicked: screen.notedWanted()
    }

    LinkRow {
        objectName: "prints"
        width: screen.contentWidth
        text: qsTr("On paper")
        note: qsTr("The lid list and more, to print")
        onClicked: screen.printsWanted()
    }

    LinkPair {
        x: screen.inset
        width: screen.contentWidth - 2 * screen.inset
        visible: !screen.household.guest
        text: box.here ? qsTr("Not here") : qsTr("Box is here")
        otherText: qsTr("Count it all")
        onClicked: box.here ? box.sayNotHere() : box.sayHere()
        onOtherClicked: screen.countWanted()
    }
}
