pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// For the child whose box it is (job.md D10): what is kept, who can see it, how long.
Sheet {
    id: screen

    required property Voice voice
    required property string childName
    required property bool shared
    /// The therapist who is told what was played; empty: nobody is.
    required property string toldTo
    readonly property string told: screen.toldTo.length > 0 ? " " + qsTr("Your grown-ups tell %1 what you played.").arg(screen.toldTo) : ""
    readonly property list<string> lines: [
        qsTr("This phone knows the name %1, and how old you are.").arg(screen.childName),
        qsTr("It knows what is in your box, and what got lost or used up."),
        qsTr("It knows what you played, and on which day."),
        qsTr("It knows which kite you tapped. After 90 days it forgets."),
        qsTr("It forgets what you played after a year."),
        qsTr("It has no photo of you. It does not listen. It does not know where you are."),
        screen.shared ? qsTr("Your grown-ups can see it. Others can see a part, and only if your grown-ups let them in.") + screen.told
                      : qsTr("Only the grown-ups with this phone can see it."),
        qsTr("You can ask a grown-up to show you. You can ask them to take something out."),
        qsTr("You never have to tap a kite.")]

    signal back()

    header: TitleBar {
        text: qsTr("What this keeps about me")
        backName: qsTr("Back to the crew")
        onBack: {
            screen.voice.stop()
            screen.back()
        }

        SpeechButton {
            objectName: "readAboutMe"
            visible: screen.voice.available
            speaking: screen.voice.speaking
            accessibleName: screen.voice.speaking ? qsTr("Stop reading") : qsTr("Read this to me")
            onClicked: screen.voice.read(screen.lines)
        }
    }

    Repeater {
        model: screen.lines

        Words {
            required property string modelData

            width: screen.contentWidth
            role: Theme.Step
            text: modelData
        }
    }
}
