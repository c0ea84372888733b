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
        objectName: "roomWords"
        width: screen.contentWidth
        soft: true
        text: screen.sitting.roomAnswered ? qsTr("Here with %1. Tap whoever comes or goes.").arg(screen.household.child)
                                          : qsTr("Nobody has said yet, so everyone at home counts as here.")
    }

    Repeater {
        model: room

        ChoiceRow {
            id: person

            required property string name
            required property bool here
            required property int index
            required note

            objectName: "person-" + person.name
            width: screen.contentWidth
            text: person.name
            checked: person.here
            onToggled: room.togglePerson(person.index)
        }
    }

    RoomVisitors {
        width: screen.contentWidth
        room: room
    }

    RoomAdult {
        width: screen.contentWidth
        room: room
    }

    StitchedLink {
        objectName: "homeSheet"
        anchors.left: parent.left
        text: qsTr("Home sheet")
        onClicked: screen.homeSheetWanted()
    }

    foot: ActionFoot {
        text: qsTr("That's who is here")
        otherText: qsTr("Nobody else")
        onClicked: {
            room.confirm()
            screen.done()
        }
        onOtherClicked: room.nobodyElse()
    }
}
