pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// How many there are. A heavy edge and a straw tag ask for a look; dots and a word say none.
Item {
    id: chip

    enum Look { Plain, NeedsLook, None }

    property string text: ""
    property int look: CountChip.Plain
    property string tag: ""
    property bool stacked: false
    property color dotColour: Theme.ink
    property color dotGround: "transparent"
    readonly property bool none: chip.look === CountChip.None
    readonly property bool tagged: chip.tag.length > 0

    implicitWidth: chip.stacked || !chip.tagged ? Math.max(face.width, straw.width)
                                                : face.width + straw.width + 6
    implicitHeight: chip.stacked && chip.tagged ? face.height + straw.height + 5 : face.height

    Accessible.role: Accessible.StaticText
    Accessible.name: chip.tagged ? chip.text + ", " + chip.tag : chip.text

    Rectangle {
        id: face

        x: chip.stacked !== chip.LayoutMirroring.enabled ? chip.width - width : 0
        width: Math.max(27, number.implicitWidth + 13)
        height: Math.max(26, number.height + 6)
        radius: Theme.radiusChip
        color: chip.none ? chip.dotGround : Theme.slip
        border.width: chip.none ? 0 : chip.look === CountChip.NeedsLook ? 2.5 : 1
        border.color: Theme.slipText

        DashFrame {
            anchors.fill: parent
            visible: chip.none
            colour: chip.dotColour
            dotted: true
            thickness: 2
            radius: Theme.radiusChip
        }

        Words {
            id: number

            anchors.centerIn: parent
            role: Theme.Number
            color: chip.none ? chip.dotColour : Theme.slipText
            spoken: false
            text: chip.text
        }
    }

    CountTag {
        id: straw

        anchors.right: parent.right
        y: chip.stacked ? face.height + 5 : (face.height - height) / 2
        width: chip.tagged ? implicitWidth : 0
        visible: chip.tagged
        text: chip.tag
    }
}
