pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// Lines that make it easier and lines that make it harder, each with what it changes.
Column {
    id: part

    required property OwnWritingViewModel writing

    spacing: Theme.gap

    OwnLineList {
        width: part.width
        lines: part.writing.easier
        label: qsTr("Easier, line %1")
        addText: qsTr("Add a line that makes it easier")
        levers: part.writing.levers
    }

    OwnLineList {
        width: part.width
        lines: part.writing.harder
        label: qsTr("Harder, line %1")
        addText: qsTr("Add a line that makes it harder")
        levers: part.writing.levers
    }
}
