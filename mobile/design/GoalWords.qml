pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One step of a goal: a bold word and what it means.
Column {
    id: step

    property string lead: ""
    property string text: ""

    spacing: 3

    Words {
        width: parent.width
        role: Theme.Strong
        text: step.lead
    }

    Words {
        width: parent.width
        text: step.text
    }
}
