pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Today

/// Small guests who stand on no home sheet.
Column {
    id: visitors

    required property RoomViewModel room

    spacing: Theme.gap

    SectionWords {
        width: visitors.width
        text: qsTr("A guest?")
    }

    ChoiceRow {
        objectName: "visitorUnderThree"
        width: visitors.width
        text: qsTr("A guest under three")
        checked: visitors.room.visitorUnderThree
        onToggled: visitors.room.toggleVisitorUnderThree()
    }

    ChoiceRow {
        objectName: "visitorMouther"
        width: visitors.width
        text: qsTr("A guest who puts things in the mouth")
        checked: visitors.room.visitorMouther
        onToggled: visitors.room.toggleVisitorMouther()
    }
}
