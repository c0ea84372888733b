pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.PutBack

/// The number to call comes before any question; then what went wrong, and what to do until help is
/// there (safety.md EM-01 to EM-05).
FullStop {
    id: screen

    required property Household household
    /// "airway", "swallowed", "breathing", "eye"; empty: not said yet.
    property string trouble: ""

    signal done()

    lead: emergency.firstLine
    answers: ["", qsTr("Back")]
    onAnswered: screen.done()

    Slip {
        objectName: "callEmergency"
        width: parent.width
        visible: text.length > 0
        ground: Theme.OnSafety
        text: emergency.callText
        onClicked: Qt.openUrlExternally(emergency.callUrl)
    }

    Slip {
        objectName: "callPoison"
        width: parent.width
        visible: text.length > 0
        ground: Theme.OnSafety
        text: emergency.poisonText
        onClicked: Qt.openUrlExternally(emergency.poisonUrl)
    }

    Words {
        width: parent.width
        color: Theme.safetyText
        visible: screen.trouble.length === 0
        text: qsTr("What happened?")
    }

    Repeater {
        model: emergency

        TroubleRow {
            id: row

            required property string name

            objectName: "trouble-" + row.name
            width: parent ? parent.width : 0
            open: screen.trouble === row.name
            onChosen: screen.trouble = row.name
        }
    }

    EmergencyViewModel {
        id: emergency

        household: screen.household
    }
}
