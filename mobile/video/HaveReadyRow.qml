pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One thing with its picture, and whether it is at hand.
Column {
    id: row

    property string heading: ""
    property string name: ""
    property string drawing: ""
    property string note: ""
    property bool here: false
    property bool missing: false

    signal said(bool here)

    spacing: Theme.chipGap

    SectionWords {
        width: row.width
        visible: row.heading.length > 0
        text: row.heading
    }

    Card {
        width: row.width
        spacing: Theme.chipGap

        PicturedWords {
            role: Theme.Row
            stacked: Theme.largeText
            drawing: row.drawing
            text: row.name
            note: row.note
        }

        ChipFlow {
            width: parent.width

            FilterChip {
                objectName: "here"
                picked: row.here
                accessibleName: row.name + ": " + text
                text: qsTr("Here")
                onClicked: row.said(true)
            }

            FilterChip {
                objectName: "not-here"
                picked: row.missing
                accessibleName: row.name + ": " + text
                text: qsTr("Not here")
                onClicked: row.said(false)
            }
        }
    }
}
