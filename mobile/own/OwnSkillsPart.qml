pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// What it is for.
Column {
    id: part

    required property OwnWritingViewModel writing

    spacing: Theme.gap

    OwnChips {
        width: part.width
        label: qsTr("What it is for first of all: one or two")
        choice: part.writing.mainSkills
    }

    OwnChips {
        width: part.width
        label: qsTr("And also: two at most")
        choice: part.writing.alsoSkills
    }
}
