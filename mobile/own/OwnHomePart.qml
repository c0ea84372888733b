pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// What to say while playing, and how everything comes home; the lid is always the last line.
Column {
    id: part

    required property OwnWritingViewModel writing

    spacing: Theme.gap

    OwnLineList {
        width: part.width
        lines: part.writing.sayLines
        label: qsTr("Something to say, line %1")
        addText: qsTr("Add something to say")
    }

    OwnLineList {
        width: part.width
        lines: part.writing.putBack
        label: qsTr("Putting back, line %1")
        addText: qsTr("Add a line for putting back")
    }

    Words {
        width: part.width
        soft: true
        visible: part.writing.usesBox
        text: qsTr("Last of all: lid on.")
    }

    StitchedLink {
        objectName: "suggestPutBack"
        anchors.left: parent.left
        width: Math.min(implicitWidth, part.width)
        visible: part.writing.things.count > 0
        text: qsTr("Write a line for each thing")
        onClicked: part.writing.suggestPutBack()
    }
}
