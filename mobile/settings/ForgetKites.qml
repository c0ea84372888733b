pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Takes away all that was kept of the kite, after one question.
Column {
    id: forget

    required property string childName
    property bool asked: false
    property bool done: false

    signal wanted()

    spacing: Theme.smallGap

    LinkRow {
        objectName: "forgetKites"
        width: forget.width
        visible: !forget.asked
        text: qsTr("Forget every kite %1 has shown").arg(forget.childName)
        note: forget.done ? qsTr("Forgotten.") : qsTr("They go by themselves after 90 days.")
        onClicked: forget.asked = true
    }

    Words {
        width: forget.width
        visible: forget.asked
        role: Theme.Label
        text: qsTr("Forget every kite %1 has shown").arg(forget.childName)
    }

    Words {
        width: forget.width
        visible: forget.asked
        text: qsTr("They are gone for good then, here and on the other phones of this home.")
    }

    ChipFlow {
        width: forget.width
        visible: forget.asked

        FilterChip {
            acts: true
            text: qsTr("Forget them")
            onClicked: {
                forget.asked = false
                forget.done = true
                forget.wanted()
            }
        }

        FilterChip {
            acts: true
            text: qsTr("Keep them")
            onClicked: forget.asked = false
        }
    }
}
