pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One place of a session: what is played there, and a way to another.
Column {
    id: place

    property string heading: ""
    property string name: ""
    property string drawing: ""
    property string note: ""
    property bool others: false

    signal anotherWanted()

    spacing: Theme.chipGap

    SectionWords {
        width: place.width
        text: place.heading
    }

    Card {
        width: place.width
        spacing: Theme.chipGap

        PicturedWords {
            side: Theme.itemLarge
            stacked: Theme.largeText
            drawing: place.drawing
            text: place.name
            note: place.note
        }

        StitchedLink {
            objectName: "another"
            anchors.left: parent.left
            visible: place.others
            text: qsTr("Another")
            accessibleName: qsTr("Another: %1, %2").arg(place.heading).arg(place.name)
            onClicked: place.anotherWanted()
        }
    }
}
