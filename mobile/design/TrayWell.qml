pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One item's place in the box: drawing at the start, count at the end, mark under it, name below.
/// A mark too long to stand beside the drawing comes last of all. In large text a row: drawing, name
/// with the mark under it, count.
Pressable {
    id: well

    property string drawing: ""
    property string count: ""
    property int look: CountChip.Plain
    property string tag: ""
    property bool clickable: true
    readonly property bool asRow: Theme.largeText
    readonly property int pictureRoom: 60
    /// More letters would lie on the drawing.
    readonly property int lettersBeside: 4
    readonly property bool tagBelow: well.asRow || well.tag.length > well.lettersBeside
    /// In a row the count gives way to a long word of the name.
    readonly property bool chipBelow: well.asRow && longest.room > well.availableWidth - well.pictureRoom - Theme.gap - chip.implicitWidth - Theme.smallGap
    readonly property real roomBelow: well.chipBelow ? chip.implicitHeight + Theme.smallGap : 0
    /// A word where the number stands takes a corner of the drawing's room.
    readonly property bool wordy: !well.asRow && well.count.length > 2
    readonly property int pictureSide: well.asRow || well.width >= 96 && !well.wordy ? well.pictureRoom : Theme.itemSmall

    accessibleName: well.text + well.sentence(well.count) + well.sentence(well.tag)
    paperRadius: Theme.radiusWell
    startPadding: 6
    endPadding: 5
    topPadding: 5
    bottomPadding: 7
    focusPolicy: well.clickable ? Qt.StrongFocus : Qt.NoFocus
    hoverEnabled: well.clickable

    background: Rectangle {
        radius: Theme.radiusWell
        color: Theme.well
        border.width: well.clickable && well.down ? 2 : Theme.cardEdgeWidth
        border.color: well.clickable && (well.down || well.hovered) ? Theme.wellText : Theme.wellEdge
    }

    LongestWord {
        id: longest

        font: Theme.font(Theme.Caption, false, Theme.textScale, Theme.arabicScript)
        text: well.text
    }

    contentItem: Item {
        implicitHeight: well.asRow ? Math.max(well.pictureRoom, naming.height + well.roomBelow, chip.implicitHeight)
                                   : Math.max(1 + well.pictureRoom, chip.implicitHeight + shortTag.needed) + naming.height

        Drawing {
            id: picture

            anchors.left: parent.left
            y: well.asRow ? (parent.height - height) / 2 
             : well.wordy ? well.pictureRoom - height : 1 + (well.pictureRoom - height) / 2
            width: well.pictureSide
            height: well.pictureSide
            name: well.drawing
        }

        CountChip {
            id: chip

            anchors.right: parent.right
            y: !well.asRow ? 0 : well.chipBelow ? naming.y + naming.height + Theme.smallGap : (parent.height - height) / 2
            text: well.count
            look: well.look
            stacked: true
            dotColour: Theme.wellText
            dotGround: Theme.well
            visible: text.length > 0
            Accessible.ignored: true
        }

        Column {
            id: naming

            anchors.left: well.asRow ? picture.right : parent.left
            anchors.leftMargin: well.asRow ? Theme.gap : 2
            anchors.right: well.asRow && !well.chipBelow ? chip.left : parent.right
            anchors.rightMargin: well.asRow ? Theme.smallGap : 0
            y: well.asRow ? (parent.height - height - well.roomBelow) / 2
                          : Math.max(1 + well.pictureRoom, chip.implicitHeight + shortTag.needed)
            spacing: Theme.smallGap

            FittingWords {
                width: naming.width
                usualRole: Theme.Reason
                smallerRole: Theme.Caption
                strong: false
                color: Theme.wellText
                spoken: false
                text: well.text
            }

            CountTag {
                // A long mark takes the whole width of its well.
                x: width > naming.width ? -naming.x - well.leftPadding : well.mirrored ? naming.width - width : 0
                room: well.asRow ? naming.width : well.width
                visible: well.tagBelow && well.tag.length > 0
                text: well.tag
            }
        }

        CountTag {
            id: shortTag

            readonly property real below: 5
            readonly property real needed: visible ? height + shortTag.below : 0

            x: well.mirrored ? 0 : parent.width - width
            y: chip.height + shortTag.below
            visible: !well.tagBelow && well.tag.length > 0
            text: well.tag
        }
    }
}
