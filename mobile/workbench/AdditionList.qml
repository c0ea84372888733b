pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Workbench

/// What the catalogue has for a box and the list has not, while somebody looks for it.
Column {
    id: additions

    required property Household household
    required property ReviseViewModel list
    property bool open: false

    signal wanted(string itemId)

    visible: additions.open
    spacing: Theme.gap

    AdditionViewModel {
        id: kinds

        household: additions.household
    }

    Repeater {
        model: additions.open ? kinds : null

        LinkRow {
            id: addition

            required property string itemId
            required property string name
            required property string refused
            required drawing
            required note

            objectName: "add-" + addition.itemId
            width: additions.width
            visible: !additions.list.has(addition.itemId)
            text: addition.name
            accessibleName: qsTr("Put in: %1").arg(addition.name) + sentence(addition.note)
            notNowReason: addition.refused
            onClicked: additions.wanted(addition.itemId)
        }
    }
}
