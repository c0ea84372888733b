pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Builds

/// What can be put into a box, while somebody looks for it.
Column {
    id: things

    required property Household household
    /// Ids of those that are in it already.
    property list<string> inIt: []
    property bool open: false

    signal wanted(string itemId)

    spacing: Theme.gap

    StitchedLink {
        objectName: "putIn"
        anchors.left: parent.left
        width: Math.min(implicitWidth, things.width)
        text: things.open ? qsTr("Close the list of things") : qsTr("Put something in")
        onClicked: things.open = !things.open
    }

    BoxThings {
        id: all

        household: things.household
    }

    Repeater {
        model: things.open ? all : null

        LinkRow {
            id: thing

            required property string itemId
            required property string name
            required drawing

            objectName: "add-" + thing.itemId
            width: things.width
            visible: !things.inIt.includes(thing.itemId)
            text: thing.name
            accessibleName: qsTr("Put in: %1").arg(thing.name)
            onClicked: things.wanted(thing.itemId)
        }
    }
}
