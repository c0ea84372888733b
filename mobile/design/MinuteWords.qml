pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One part of the time: a stroke a minute over its words.
Column {
    id: part

    property int minutes: 0
    property string text: ""

    spacing: 3 - Theme.scriptRoom

    TallyMarks {
        anchors.left: parent.left
        width: Math.max(1, implicitWidth) // none out: the words still stand in line with the others
        count: part.minutes
        colour: Theme.accent
    }

    Words {
        anchors.left: parent.left
        role: Theme.Caption
        soft: true
        spoken: false
        text: part.text
    }
}
