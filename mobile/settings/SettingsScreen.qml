pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Settings

/// How this phone shows things.
Sheet {
    id: screen

    required property Household household
    required property Appearance appearance
    required property Reminders reminders
    required property Sitting sitting
    required property string childName
    /// Who has checked the activities; empty: a clinician has, all of them.
    required property string reviewNotice
    required property Voice voice
    /// Where the kite on paper was saved, or why it was not; empty: not asked for.
    property string paperNote: ""

    signal back()
    signal paperKiteWanted()

    header: TitleBar {
        text: qsTr("Settings")
        backName: qsTr("Back to the crew")
        onBack: screen.back()
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Words")
    }

    WordsSettings {
        width: screen.contentWidth
        household: screen.household
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Text size")
    }

    Repeater {
        model: [qsTr("Ordinary"), qsTr("Larger"), qsTr("Twice as large")]

        ChoiceRow {
            id: size

            required property string modelData
            required property int index

            objectName: "size-" + size.index
            width: screen.contentWidth
            exclusive: true
            text: size.modelData
            checked: screen.appearance.textScale === 1 + size.index / 2
            onToggled: {
                screen.held = size
                screen.appearance.textScale = 1 + size.index / 2
            }
        }
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Light")
    }

    Column {
        width: screen.contentWidth
        spacing: Theme.gap

        Repeater {
            model: [qsTr("Light"), qsTr("Dark"), qsTr("High contrast")]

            ChoiceRow {
                id: light

                required property string modelData
                required property int index

                objectName: "scheme-" + light.index
                width: screen.contentWidth
                exclusive: true
                text: light.modelData
                checked: screen.appearance.scheme === light.index
                onToggled: screen.appearance.scheme = light.index
            }
        }
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Hand and motion")
    }

    Column {
        width: screen.contentWidth
        spacing: Theme.gap

        ChoiceRow {
            objectName: "leftHanded"
            width: screen.contentWidth
            text: qsTr("I hold the phone in my left hand")
            checked: screen.appearance.leftHanded
            onToggled: screen.appearance.leftHanded = !screen.appearance.leftHanded
        }

        ChoiceRow {
            objectName: "childLeftHanded"
            width: screen.contentWidth
            text: qsTr("%1 works with the left hand").arg(screen.childName)
            note: qsTr("The pictures change hands, where they can.")
            checked: screen.sitting.childLeftHanded
            onToggled: screen.sitting.childLeftHanded = !screen.sitting.childLeftHanded
        }

        ChoiceRow {
            objectName: "stillPictures"
            width: screen.contentWidth
            text: qsTr("Nothing moves")
            checked: screen.appearance.reducedMotion
            onToggled: screen.appearance.reducedMotion = !screen.appearance.reducedMotion
        }

        ChoiceRow {
            objectName: "saveBattery"
            width: screen.contentWidth
            text: qsTr("Save the battery")
            note: qsTr("Dark, and nothing moves. With less than 15 % left nothing moves anyway.")
            checked: screen.appearance.saveBattery
            onToggled: screen.appearance.saveBattery = !screen.appearance.saveBattery
        }
    }

    SwitchSettings {
        width: screen.contentWidth
        appearance: screen.appearance
    }

    SectionWords {
        width: screen.contentWidth
        visible: countAloud.visible
        text: qsTr("Putting back")
    }

    ChoiceRow {
        id: countAloud

        objectName: "countAloud"
        width: screen.contentWidth
        visible: screen.voice.available
        text: qsTr("Count the pieces aloud")
        note: qsTr("One, two, three, as each comes home.")
        checked: screen.appearance.countAloud
        onToggled: screen.appearance.countAloud = !screen.appearance.countAloud
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("A reminder")
    }

    ReminderSettings {
        width: screen.contentWidth
        reminders: screen.reminders
    }

    SectionWords {
        width: screen.contentWidth
        visible: screen.reviewNotice.length > 0
        text: qsTr("The activities")
    }

    Words {
        objectName: "reviewNotice"
        width: screen.contentWidth
        visible: text.length > 0
        text: screen.reviewNotice
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("The kite")
    }

    ChoiceRow {
        objectName: "kiteOn"
        width: screen.contentWidth
        text: qsTr("Offer the kite before play")
        note: qsTr("Off, it is nowhere to be seen.")
        checked: !screen.sitting.kiteOff
        onToggled: screen.sitting.kiteOff = !screen.sitting.kiteOff
    }

    KiteSettings {
        width: screen.contentWidth
        visible: !screen.sitting.kiteOff
        appearance: screen.appearance
        voice: screen.voice
        paperNote: screen.paperNote
        childName: screen.childName
        onForgetWanted: screen.sitting.forgetKites()
        onPaperKiteWanted: screen.paperKiteWanted()
        onNoted: note => screen.showItem(note)
    }
}
