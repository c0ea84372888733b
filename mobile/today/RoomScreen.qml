pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Today

/// Who is in the room. What nobody has answered counts the careful way.
Sheet {
    id: screen

    required property Household household
    required property Sitting sitting

    signal done()
    signal homeSheetWanted()

    RoomViewModel {
        id: room

        household: screen.household
        sitting: screen.sitting
        Component.onCompleted: room.load()
    }

    header: TitleBar {
        text: qsTr("Who is here?")
        backName: qsTr("Back to today")
        onBack: screen.done()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Body
        soft: true
        text: screen.sitting.roomAnswered
              ? qsTr("With %1 and you. Tap whoever comes or goes.").arg(screen.household.child)
              : qsTr("Nobody has said yet, so everyone at home counts as here.")
    }

    Repeater {
        model: room

        ChoiceRow {
            id: person

            required property string name
            required note
            required property bool here
            required property int index

            objectName: "person-" + person.name
            width: screen.contentWidth
            text: person.name
            checked: person.here
            onToggled: room.togglePerson(person.index)
        }
    }

    ChoiceRow {
        objectName: "visitorUnderThree"
        width: screen.contentWidth
        text: qsTr("A visitor under three")
        checked: room.visitorUnderThree
        onToggled: room.toggleVisitorUnderThree()
    }

    ChoiceRow {
        objectName: "visitorMouther"
        width: screen.contentWidth
        text: qsTr("A visitor who puts things in the mouth")
        checked: room.visitorMouther
        onToggled: room.toggleVisitorMouther()
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("How close can you stay?")
    }

    Repeater {
        model: [qsTr("Right beside"), qsTr("Within arm's reach"), qsTr("In the same room")]

        ChoiceRow {
            id: level

            required property string modelData
            required property int index

            width: screen.contentWidth
            exclusive: true
            text: level.modelData
            checked: room.adultCanBe === 2 - level.index
            onToggled: room.setAdultCanBe(2 - level.index)
        }
    }

    ChoiceRow {
        objectName: "besideSaid"
        width: screen.contentWidth
        visible: room.askWater
        text: qsTr("I stay right beside the water")
        note: qsTr("A child under three is here.")
        checked: room.besideSaid
        onToggled: room.toggleBesideSaid()
    }

    ChoiceRow {
        objectName: "quietNow"
        width: screen.contentWidth
        text: qsTr("Quiet now")
        note: qsTr("Somebody sleeps, or noise is too much.")
        checked: room.quietNow
        onToggled: room.toggleQuietNow()
    }

    StitchedLink {
        text: qsTr("Home sheet")
        onClicked: screen.homeSheetWanted()
    }

    foot: ActionFoot {
        text: qsTr("That's right")
        otherText: qsTr("Nobody else")
        onClicked: screen.done()
        onOtherClicked: room.nobodyElse()
    }
}
