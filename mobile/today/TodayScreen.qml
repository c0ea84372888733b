pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Today

/// The first screen: who is here, what the kite is doing, three things to play.
Sheet {
    id: screen

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand

    signal roomWanted()
    signal kiteWanted()
    signal chooseWanted()
    signal everythingWanted()
    signal floorCheckWanted()
    signal boxWanted()
    signal childChosen(string alias)
    signal playBegun()

    function reload() {
        today.refresh()
    }

    spacing: Theme.chipGap

    TodayViewModel {
        id: today

        household: screen.household
        sitting: screen.sitting
        playInHand: screen.playInHand
        Component.onCompleted: today.refresh()
    }

    ScreenTitle {
        width: screen.contentWidth
        over: today.dayWords
        text: qsTr("Play with %1").arg(screen.household.child)

        NameTagLine {
            objectName: "room"
            names: today.roomNames.slice(0, 2)
            moreText: today.roomNames.length > 2 ? qsTr("+%1").arg(today.roomNames.length - 2) : ""
            note: screen.sitting.roomAnswered ? qsTr("in the room") : qsTr("who is here?")
            accessibleName: qsTr("Who is in the room: %1").arg(today.roomNames.join(", "))
            onClicked: screen.roomWanted()
        }
    }

    ChildSwitch {
        width: screen.contentWidth
        visible: screen.household.children.length > 1
        household: screen.household
        onChosen: alias => screen.childChosen(alias)
    }

    TodayNotes {
        width: screen.contentWidth
        problem: today.problem
        floorNote: today.floorNote
        boxPlace: today.boxPlace
        unchecked: today.unchecked
        onFloorCheckWanted: screen.floorCheckWanted()
        onBoxWanted: screen.boxWanted()
        onUncheckedRead: today.hideUnchecked()
        onTryAgain: today.refresh()
    }

    KiteRow {
        objectName: "kiteRow"
        width: screen.contentWidth
        visible: !screen.sitting.kiteOff
        drawing: screen.sitting.kite.length === 0 ? "kite-steady" : screen.sitting.kite === "bag"
                 ? "kite-bag" : screen.sitting.kite === "clouds" ? "kite-clouds" : "kite-" + screen.sitting.kite
        text: today.kiteName.length > 0 ? today.kiteName : qsTr("What is your kite doing?")
        note: today.kiteName.length > 0
              ? screen.sitting.kiteFromAdult ? qsTr("your own guess")
                                             : qsTr("%1 showed us just now").arg(screen.household.child)
              : screen.sitting.kiteInCorner ? qsTr("waits here, whenever wanted") : qsTr("one tap, or go without")
        onClicked: screen.kiteWanted()
    }

    Words {
        width: screen.contentWidth
        visible: today.kiteAdvice.length > 0
        role: Theme.Reason
        soft: true
        text: today.kiteAdvice + " " + qsTr("Often suits. You know best what it did.")
    }

    Repeater {
        model: today

        OfferCard {
            id: offer

            required property string activityId
            required property string drawingAlt
            required drawing
            required name
            required why
            required supervision
            required minutesOut
            required minutesPlay
            required minutesBack

            objectName: "offer-" + offer.activityId
            width: screen.contentWidth
            outText: qsTr("out %1").arg(offer.minutesOut)
            playText: qsTr("play %1").arg(offer.minutesPlay)
            backText: qsTr("back %1").arg(offer.minutesBack)
            Accessible.description: offer.drawingAlt
            onClicked: {
                if (today.begin(offer.activityId))
                    screen.playBegun()
            }
        }
    }

    EmptyState {
        width: screen.contentWidth
        visible: today.count === 0 && today.problem.length === 0
        drawing: "item-box"
        text: qsTr("Nothing fits just now")
        note: today.filtersOn.length > 0
              ? qsTr("Take one of the words below off, or look at everything with its reasons.")
              : qsTr("Look at everything: each entry says what it needs.")
        actionText: qsTr("Everything")
        onAction: screen.everythingWanted()
    }

    Repeater {
        model: today.gaveWay

        Words {
            required property string modelData

            width: screen.contentWidth
            role: Theme.Reason
            soft: true
            text: modelData
        }
    }

    LifeWords {
        width: screen.contentWidth
        on: today.filtersOn
        onToggled: name => today.toggleFilter(name)
    }

    Pair {
        width: screen.contentWidth
        visible: today.count > 0

        StitchedLink {
            objectName: "threeOthers"
            text: qsTr("Three others")
            onClicked: {
                today.threeOthers()
                screen.toTop()
            }
        }

        StitchedLink {
            objectName: "anything"
            text: qsTr("Anything at all")
            onClicked: {
                if (today.beginAnything())
                    screen.playBegun()
            }
        }
    }

    Pair {
        width: screen.contentWidth

        StitchedLink {
            objectName: "choose"
            visible: today.count > 1
            text: qsTr("%1 chooses").arg(screen.household.child)
            onClicked: screen.chooseWanted()
        }

        StitchedLink {
            objectName: "everything"
            text: qsTr("Everything")
            onClicked: screen.everythingWanted()
        }
    }
}
