pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A phone number to write down; a way to keep it shows when it differs from what is kept.
Column {
    id: entry

    property string label: ""
    property string kept: ""
    property alias problem: field.problem

    signal keep(string number)

    spacing: Theme.smallGap

    onKeptChanged: field.text = entry.kept

    PaperField {
        id: field

        width: parent.width
        label: entry.label
        maximumLength: 20
        inputMethodHints: Qt.ImhDialableCharactersOnly
        onEdited: field.problem = ""
        onAccepted: entry.keep(field.text)
    }

    StitchedLink {
        anchors.left: parent.left
        visible: field.text !== entry.kept
        text: qsTr("Keep this number")
        accessibleName: qsTr("Keep this number: %1").arg(entry.label)
        onClicked: entry.keep(field.text)
    }
}
