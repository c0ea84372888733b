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

    readonly property list<string> usual: ["no-table", "no-mess", "quiet", "tired"]
    readonly property list<string> rarer: ["one-hand", "away", "ill"]

    signal roomWanted()
    signal kiteWanted()
    signal guessWanted()
    signal chooseWanted()
    signal everythingWanted()
    signal weekWanted()
    signal floorCheckWanted()
    signal takeOutWanted()
    signal boxWanted()
    signal haveReadyWanted()
    signal childChosen(string family, string alias)
    signal playBegun()

    function begin(activityId: string) {
        if (today.begin(activityId))
            screen.playBegun()
    }

    function beginAnything() {
        if (today.beginAnything())
            screen.playBegun()
    }

    spacing: Theme.chipGap

    TodayViewModel {
        id: today

        household: screen.household
        sitting: screen.sitting
        playInHand: screen.playInHand
    }

    TodayHead {
        width: screen.contentWidth
        household: screen.household
        dayWords: today.dayWords
        roomNames: today.roomNames
        roomAnswered: screen.sitting.roomAnswered
        onRoomWanted: screen.roomWanted()
        onChildChosen: (family, alias) => screen.childChosen(family, alias)
    }

    TodayNotes {
        width: screen.contentWidth
        problem: today.problem
        catalogueNote: screen.household.catalogueNote
        floorNote: today.floorNote
        mustLeave: today.mustLeave
        boxPlace: today.boxPlace
        boxPlaceSaidBy: today.boxPlaceSaidBy
        onFloorCheckWanted: screen.floorCheckWanted()
        onTakeOutWanted: screen.takeOutWanted()
        onBoxWanted: screen.boxWanted()
        onTryAgain: today.refresh()
    }

    KiteHead {
        width: screen.contentWidth
        visible: !screen.sitting.kiteOff
        kite: screen.sitting.kite
        inCorner: screen.sitting.kiteInCorner
        name: today.kiteName
        note: today.kiteNote
        guess: today.guessName
        caution: today.kiteCaution
        onAsked: screen.kiteWanted()
    }

    LinkRow {
        objectName: "video"
        width: screen.contentWidth
        visible: today.videoSession.length > 0
        sign: "sign-people"
        text: qsTr("Video session: have ready")
        note: today.videoSession
        onClicked: screen.haveReadyWanted()
    }

    LinkRow {
        objectName: "planned"
        width: screen.contentWidth
        visible: today.planned.length > 0
        sign: "sign-today"
        text: qsTr("Kept for today: %1").arg(today.planned)
        onClicked: {
            if (today.beginPlanned())
                screen.playBegun()
        }
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
            outText: qsTr("out %1").arg(Numerals.of(offer.minutesOut))
            playText: qsTr("play %1").arg(Numerals.of(offer.minutesPlay))
            backText: qsTr("back %1").arg(Numerals.of(offer.minutesBack))
            spokenMinutes: qsTr("Minutes: out %1. play %2. back %3").arg(Numerals.of(offer.minutesOut))
                .arg(Numerals.of(offer.minutesPlay)).arg(Numerals.of(offer.minutesBack))
            Accessible.description: offer.drawingAlt
            onClicked: screen.begin(offer.activityId)
        }
    }

    FewOffers {
        width: screen.contentWidth
        none: today.count === 0
        problem: today.problem
        help: today.help
        onEverythingWanted: screen.everythingWanted()
    }

    LifeWords {
        width: screen.contentWidth
        // What narrows the offers just now stands with the first ones, to be seen and taken off.
        names: [...screen.usual, ...Array.from(screen.rarer).filter(name => today.filtersOn.includes(name))]
        on: today.filtersOn
        onToggled: name => today.toggleFilter(name)
    }

    LinkPair {
        objectName: "others"
        width: screen.contentWidth
        visible: today.count > 0
        text: qsTr("Three others")
        otherText: qsTr("Anything at all")
        onClicked: {
            today.threeOthers()
            screen.toTop()
        }
        onOtherClicked: screen.beginAnything()
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
        names: Array.from(screen.rarer).filter(name => !today.filtersOn.includes(name))
        on: today.filtersOn
        onToggled: name => today.toggleFilter(name)
    }

    LinkPair {
        objectName: "choosing"
        width: screen.contentWidth
        visible: today.count > 1
        text: qsTr("%1 chooses").arg(screen.household.child)
        otherText: qsTr("Everything")
        onClicked: screen.chooseWanted()
        onOtherClicked: screen.everythingWanted()
    }

    StitchedLink {
        objectName: "everything"
        anchors.left: parent.left
        visible: today.count === 1
        text: qsTr("Everything")
        onClicked: screen.everythingWanted()
    }

    StitchedLink {
        objectName: "week"
        anchors.left: parent.left
        visible: !screen.household.guest
        text: qsTr("The week ahead")
        onClicked: screen.weekWanted()
    }

    UncheckedNote {
        objectName: "unchecked"
        width: screen.contentWidth
        visible: today.unchecked
        text: screen.household.reviewNotice
        onRead: screen.sitting.readNotice()
    }

    KiteLines {
        width: screen.contentWidth
        visible: !screen.sitting.kiteOff
        shown: screen.sitting.kite.length > 0
        inCorner: screen.sitting.kiteInCorner
        advice: today.kiteAdvice
        onAsked: screen.kiteWanted()
        onGuessWanted: screen.guessWanted()
        onNotMe: screen.sitting.removeKite()
        onTurnedOff: screen.sitting.kiteOff = true
    }
}
