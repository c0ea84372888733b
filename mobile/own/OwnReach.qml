pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// Child by child, before it is kept: what would change if it went to the box.
Column {
    id: reach

    required property OwnBoxesViewModel boxes

    spacing: Theme.gap

    SectionWords {
        width: reach.width
        text: qsTr("What it would change")
    }

    Repeater {
        model: reach.boxes

        Card {
            id: row

            required property string child
            required property string changes

            width: reach.width
            visible: row.changes.length > 0

            Words {
                width: parent.width
                role: Theme.Row
                strong: true
                text: row.child
            }

            Words {
                width: parent.width
                role: Theme.Reason
                text: row.changes
            }
        }
    }

    Words {
        width: reach.width
        visible: reach.boxes.unchanged.length > 0
        text: qsTr("Nothing changes for: %1.").arg(reach.boxes.unchanged)
    }

    ProblemNote {
        width: reach.width
        text: reach.boxes.problem
    }
}
