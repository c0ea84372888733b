pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One thing that may have gone wrong; chosen, what to do stands right under it.
Column {
    id: row

    required property string title
    required property list<string> lines
    property bool open: false

    signal chosen()

    spacing: Theme.gap

    Said { text: row.open ? Array.from(row.lines).join(" ") : "" }

    ChoiceRow {
        width: parent.width
        text: row.title
        checked: row.open
        onToggled: {
            checked = Qt.binding(() => row.open)
            row.chosen()
        }
    }

    Repeater {
        model: row.open ? row.lines : []

        Words {
            required property string modelData

            width: row.width
            color: Theme.safetyText
            text: modelData
        }
    }
}
