pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One part of what is written. It folds open at a tap; folded, it says in a line what stands in it,
/// or that something is still to do.
Column {
    id: part

    required property string title
    default property alias contents: inside.data
    property string summary: ""
    property string toMend: ""
    property bool opened: false

    spacing: Theme.gap

    ChoiceRow {
        width: part.width
        acts: true
        pegged: part.opened
        text: part.title
        note: part.opened ? "" : part.toMend.length === 0 ? part.summary
            : (part.summary.length > 0 ? part.summary + "\n" : "") + qsTr("Something is still to do here")
        accessibleName: (part.opened ? qsTr("Close: %1") : qsTr("Open: %1")).arg(part.title) + sentence(note)
        onClicked: part.opened = !part.opened
    }

    Column {
        id: inside

        width: part.width
        visible: part.opened
    }

    Words {
        objectName: "toMend"
        width: part.width
        role: Theme.Reason
        soft: true
        visible: part.opened && text.length > 0
        text: part.toMend
    }
}
