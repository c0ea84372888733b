pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// Child by child: what the gate says before anything is sent, and who is to have it.
Column {
    id: list

    required property OwnBoxesViewModel boxes

    spacing: Theme.gap

    SectionWords {
        width: list.width
        text: qsTr("Whose box is it for?")
    }

    Repeater {
        model: list.boxes

        Column {
            id: row

            required property string child
            required property string note
            required property bool inBox
            required property bool chosen

            width: list.width
            spacing: Theme.smallGap

            ChoiceRow {
                objectName: "box-" + row.child
                width: row.width
                text: row.child
                note: row.note
                checked: row.chosen
                onToggled: list.boxes.choose(row.child, checked)
            }

            StitchedLink {
                objectName: "withdraw-" + row.child
                visible: row.inBox
                text: qsTr("Take it back")
                accessibleName: qsTr("Take it back from %1's box").arg(row.child)
                onClicked: list.boxes.withdraw(row.child)
            }
        }
    }

    ProblemNote {
        width: list.width
        text: list.boxes.problem
    }
}
