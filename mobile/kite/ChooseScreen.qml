pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The child chooses between the offers' pictures. No words in them, no way out but the held one.
FocusScope {
    id: screen

    /// Rows with activityId, drawing, drawingAlt and invite.
    required property QtObject offers

    signal chosen(string activityId)
    signal left()

    readonly property bool wide: screen.width > screen.height
    readonly property int side: Theme.childMargin
    readonly property int footRoom: Theme.mm(12) + 2 * Theme.gap
    readonly property int tiles: choices.count
    readonly property int tileHeight: screen.wide ? screen.height - screen.footRoom - 2 * screen.side
        : Math.floor((screen.height - screen.footRoom - screen.side - (screen.tiles - 1) * Theme.sectionGap) / Math.max(1, screen.tiles))
    property string pickedId: ""

    Keys.onEscapePressed: {}
    Keys.onBackPressed: {}

    Timer {
        id: onward

        interval: 600
        onTriggered: screen.chosen(screen.pickedId)
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Repeater {
        id: choices

        model: screen.offers

        ChildTile {
            id: tile

            required property string activityId
            required property string drawingAlt
            required property string invite
            required property int index
            required drawing

            objectName: "choice-" + tile.activityId
            x: screen.side + (screen.wide ? tile.index * (tile.width + Theme.sectionGap) : 0)
            y: screen.side + (screen.wide ? 0 : tile.index * (screen.tileHeight + Theme.sectionGap))
            width: screen.wide ? (screen.width - 2 * screen.side - (screen.tiles - 1) * Theme.sectionGap) / Math.max(1, screen.tiles)
                               : screen.width - 2 * screen.side
            height: screen.tileHeight
            upright: true
            accessibleName: tile.invite + " " + tile.drawingAlt
            picked: screen.pickedId === tile.activityId
            onChosen: {
                if (onward.running)
                    return
                screen.pickedId = tile.activityId
                onward.start()
            }
        }
    }

    Words {
        x: screen.side + 6
        anchors.verticalCenter: heldControl.verticalCenter
        width: heldControl.x - x - Theme.gap
        role: Theme.Label
        text: qsTr("You choose. We play together.")
    }

    HeldAdultControl {
        id: heldControl

        objectName: "adultHold"
        x: screen.width - width - screen.side
        y: screen.height - height - Theme.gap
        text: qsTr("adult: hold")
        onHeld: screen.left()
    }
}
