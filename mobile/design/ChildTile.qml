pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One answer a child can give. The whole tile is the target; the peg clips on after the tap.
/// A touch shorter than `minimumTouchMs` is not an answer; keys and screen readers have no such rule.
/// Where there is a `longTouchMs`, a touch that lasts that long asks what the picture says and is no
/// answer; without it every touch is one, however long.
Pressable {
    id: tile

    property string drawing: ""
    property string note: ""
    property string shortText: ""
    readonly property bool small: tile.upright && tile.height < 100
    readonly property string shownText: Theme.largeText && tile.shortText.length > 0 ? tile.shortText : tile.text
    property bool upright: false
    property bool picked: false
    property int minimumTouchMs: 0
    property bool longEnough: false
    property int longTouchMs: 0
    property bool lingers: false
    /// After it is chosen with a switch, nothing is lit until the switch asks for another round.
    readonly property bool restsAfter: true
    /// How the picture is turned or moved about its middle.
    property matrix4x4 pictureMatrix
    property real wordsWidth: Theme.largeText ? 130 : 106

    signal chosen()
    signal lingered()

    function press() {
        tile.chosen()
    }

    ground: Theme.OnPicture
    paperRadius: Theme.radiusTile
    accessibleName: tile.text + tile.sentence(tile.note)
    topPadding: 4 + paper.drop
    bottomPadding: 4 - paper.drop
    startPadding: 4
    Accessible.selectable: true
    Accessible.selected: tile.picked
    onPressed: {
        tile.longEnough = tile.minimumTouchMs === 0
        tile.lingers = false
    }
    onClicked: {
        if (tile.longEnough && !tile.lingers)
            tile.chosen()
    }

    Timer {
        interval: tile.minimumTouchMs
        running: tile.pressed && tile.minimumTouchMs > 0
        onTriggered: tile.longEnough = true
    }

    Timer {
        interval: tile.longTouchMs
        running: tile.pressed && tile.longTouchMs > 0
        onTriggered: {
            tile.lingers = true
            tile.lingered()
        }
    }

    background: PaperEdge {
        id: paper

        fill: Theme.picture
        radius: Theme.radiusTile
        edgeColour: tile.hovered ? Theme.pictureText : Theme.tileEdge
        edgeWidth: Theme.tileEdgeWidth
        pressedEdge: Theme.pictureText
        pressed: tile.down

        PegMark {
            readonly property int fromEnd: 14

            x: tile.mirrored ? fromEnd : paper.width - width - fromEnd
            y: -9
            clipped: tile.picked
        }
    }

    contentItem: Item {
        Drawing {
            id: picture

            anchors.left: parent.left
            y: tile.upright ? 0 : (parent.height - height) / 2
            width: tile.upright || words.width === 0 ? parent.width : parent.width - words.width
            height: tile.upright && tile.text.length > 0 ? parent.height - words.height : parent.height
            name: tile.drawing
            transform: Matrix4x4 {
                readonly property matrix4x4 there: Qt.matrix4x4(1, 0, 0, picture.width / 2, 0, 1, 0, picture.height / 2, 0, 0, 1, 0, 0, 0, 0, 1)

                matrix: there.times(tile.pictureMatrix).times(there.inverted())
            }
        }

        Column {
            id: words

            anchors.right: parent.right
            y: tile.upright ? parent.height - height : (parent.height - height) / 2
            width: tile.text.length === 0 ? 0 : tile.upright ? parent.width : tile.wordsWidth
            bottomPadding: tile.small ? 2 : tile.upright ? 6 : 0
            spacing: 4

            FittingWords {
                id: word

                readonly property bool squeezed: tile.upright && word.usualWidth > word.width
                                                 && word.usualWidth * 14 <= word.width * font.pixelSize

                width: parent.width
                usualRole: tile.small ? Theme.TabWord : Theme.Label
                wrapMode: squeezed ? Text.NoWrap : Text.Wrap
                fontSizeMode: squeezed ? Text.HorizontalFit : Text.FixedSize
                minimumPixelSize: 13
                horizontalAlignment: tile.upright ? Text.AlignHCenter : Text.AlignLeft
                color: Theme.pictureText
                spoken: false
                text: tile.shownText
            }

            Words {
                width: parent.width
                role: Theme.Caption
                horizontalAlignment: tile.upright ? Text.AlignHCenter : Text.AlignLeft
                color: Theme.pictureSoft
                spoken: false
                // It gives way where the name alone fills the tile.
                visible: tile.note.length > 0 && !Theme.largeText
                         && word.implicitHeight + words.spacing + implicitHeight <= tile.availableHeight
                text: tile.note
            }
        }
    }
}
