pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Today

/// Which day, whose play, who is in the room; and the other children with a box on this phone.
Column {
    id: head

    required property Household household
    required property string dayWords
    required property list<string> roomNames
    required property bool roomAnswered
    readonly property int tags: 2
    readonly property int unnamed: head.roomNames.length - head.tags

    signal roomWanted()
    signal childChosen(string family, string alias)

    spacing: Theme.chipGap

    ScreenTitle {
        width: head.width
        over: head.dayWords
        text: qsTr("Play with %1").arg(head.household.childTitle)

        NameTagLine {
            objectName: "room"
            names: head.roomNames.slice(0, head.tags)
            note: !head.roomAnswered ? qsTr("who is here?")
                : head.unnamed > 0 ? qsTr("and %n more", "", head.unnamed) : qsTr("in the room")
            accessibleName: head.roomAnswered ? qsTr("In the room: %1").arg(Array.from(head.roomNames).join(", "))
                                              : qsTr("Who is here? Perhaps %1").arg(Array.from(head.roomNames).join(", "))
            onClicked: head.roomWanted()
        }
    }

    ChildSwitch {
        width: head.width
        visible: head.household.several
        household: head.household
        onChosen: (family, alias) => head.childChosen(family, alias)
    }
}
