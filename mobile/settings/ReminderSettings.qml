pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One quiet line a day, on a moment that the family has anyway. Off at the start.
Column {
    id: settings

    required property Reminders reminders
    readonly property list<string> hooks: ["after-school", "after-tea", "after-bath", "before-bed", "own"]

    function wordFor(hook: string): string {
        switch (hook) {
        case "after-school": return qsTr("After school")
        case "after-tea": return qsTr("After tea")
        case "after-bath": return qsTr("After bath")
        case "before-bed": return qsTr("Before bed")
        default: return qsTr("Our own words")
        }
    }

    spacing: Theme.gap
    Component.onCompleted: {
        if (settings.reminders.on)
            settings.reminders.look()
    }

    ChoiceRow {
        objectName: "reminder"
        width: settings.width
        text: qsTr("One quiet reminder a day")
        note: qsTr("Without a sound, and not on a day when somebody has played.")
        checked: settings.reminders.on
        onToggled: settings.reminders.on = !settings.reminders.on
    }

    Column {
        width: settings.width
        spacing: Theme.gap
        visible: settings.reminders.on

        Words {
            objectName: "nobodyShowsIt"
            width: settings.width
            visible: !settings.reminders.canBeShown
            text: qsTr("This phone has nothing to show a reminder with. It stays silent.")
        }

        ChipFlow {
            width: settings.width

            Repeater {
                model: settings.hooks

                FilterChip {
                    id: chip

                    required property string modelData

                    objectName: "hook-" + chip.modelData
                    text: settings.wordFor(chip.modelData)
                    picked: settings.reminders.hook === chip.modelData
                    onClicked: settings.reminders.hook = chip.modelData
                }
            }
        }

        OwnLine {
            width: settings.width
            visible: settings.reminders.hook === "own"
            reminders: settings.reminders
        }

        Stepper {
            objectName: "reminderTime"
            width: settings.width
            text: qsTr("At about")
            value: settings.reminders.quarter
            to: 95
            valueText: settings.reminders.timeText
            lessName: qsTr("A quarter of an hour earlier")
            moreName: qsTr("A quarter of an hour later")
            onChanged: quarter => settings.reminders.quarter = quarter
        }

        Card {
            width: settings.width

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: qsTr("All that the locked screen says")
            }

            Words {
                objectName: "reminderLine"
                width: parent.width
                role: Theme.Label
                text: settings.reminders.line
            }
        }
    }
}
