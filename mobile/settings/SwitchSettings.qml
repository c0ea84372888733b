pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One or two switches in place of fingers: how many, how fast, and which key goes on.
Column {
    id: switches

    required property Appearance appearance
    readonly property list<string> ways: [qsTr("No switch"), qsTr("One switch"), qsTr("Two switches")]
    readonly property list<string> notes: ["",
        qsTr("Everything takes its turn in a ring. Any key, or a touch anywhere, presses what is in it."),
        qsTr("One key moves the ring on. Space or Enter presses what is in it.")]

    spacing: Theme.gap

    SectionWords {
        width: switches.width
        text: qsTr("Switches")
    }

    Repeater {
        model: switches.ways

        ChoiceRow {
            id: way

            required property string modelData
            required property int index

            objectName: "switches-" + way.index
            width: switches.width
            exclusive: true
            text: way.modelData
            note: switches.notes[way.index]
            checked: switches.appearance.switches === way.index
            onToggled: switches.appearance.switches = way.index
        }
    }

    Stepper {
        objectName: "scanSeconds"
        width: switches.width
        visible: switches.appearance.switches === 1
        text: qsTr("How long the ring stays")
        value: switches.appearance.scanSeconds
        from: 1
        to: 5
        valueText: qsTr("%1 s").arg(value)
        lessName: qsTr("The ring moves on sooner")
        moreName: qsTr("The ring stays longer")
        onChanged: seconds => switches.appearance.scanSeconds = seconds
    }

    LearnKey {
        objectName: "onwardKey"
        width: switches.width
        visible: switches.appearance.switches === 2
        keyName: switches.appearance.onwardKeyName
        onLearnt: key => switches.appearance.onwardKey = key
    }
}
