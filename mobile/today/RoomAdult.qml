pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Today

/// How close the adult can stay, and how loud it may be.
Column {
    id: adult

    required property RoomViewModel room
    readonly property int closest: 2

    spacing: Theme.gap

    SectionWords {
        width: adult.width
        text: qsTr("How close can you stay?")
    }

    Repeater {
        model: [qsTr("Right beside"), qsTr("Within arm's reach"), qsTr("In the same room")]

        ChoiceRow {
            id: level

            required property string modelData
            required property int index

            objectName: "adult-" + level.index
            width: adult.width
            exclusive: true
            text: level.modelData
            checked: adult.room.adultCanBe === adult.closest - level.index
            onToggled: adult.room.setAdultCanBe(adult.closest - level.index)
        }
    }

    ChoiceRow {
        objectName: "besideSaid"
        width: adult.width
        visible: adult.room.askWater
        text: qsTr("I stay right beside the water")
        note: qsTr("A child under three is here.")
        checked: adult.room.besideSaid
        onToggled: adult.room.toggleBesideSaid()
    }

    SectionWords {
        width: adult.width
        text: qsTr("How loud may it be?")
    }

    ChoiceRow {
        objectName: "quietNow"
        width: adult.width
        text: qsTr("Quiet now")
        note: qsTr("Somebody sleeps, or noise is too much.")
        checked: adult.room.quietNow
        onToggled: adult.room.toggleQuietNow()
    }
}
