pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A well of the child's tray while things are put back. Several pieces lie in a zigzag,
/// so that two round ones never look like a face.
Pressable {
    id: well

    property string drawing: ""
    property list<string> pieceDrawings
    property string placeDrawing: ""
    property int home: 0
    property int expected: 1
    readonly property int columns: well.expected <= 1 ? 1 : well.expected <= 6 ? 2 : well.expected <= 12 ? 3 : 4
    readonly property int rows: Math.ceil(well.expected / well.columns)

    ground: Theme.OnPicture
    pressedOften: true
    implicitWidth: Theme.itemLarge
    implicitHeight: well.expected <= 0 ? Theme.mm(20.5) : Theme.lowPage ? 150 : Theme.largeText ? 244 : 232
    startPadding: Theme.chipGap
    topPadding: Theme.chipGap
    bottomPadding: Theme.chipGap
    Accessible.name: well.accessibleName

    background: Rectangle {
        radius: Theme.radiusTile
        color: Theme.picture
        border.width: well.down ? 2 : Theme.lineWidth
        border.color: well.down || well.hovered ? Theme.pictureText : Theme.line
    }

    contentItem: Item {
        Item {
            id: floor

            readonly property real pieceSide: well.columns === 1
                ? Math.min(width, height, 130)
                : Math.min(Theme.itemSmall, width / (well.columns + 0.15), height / (well.rows + 0.35))
            readonly property real stepDown: Math.min(pieceSide * 1.15, (height - pieceSide * 1.35) / Math.max(1, well.rows - 1))
            readonly property real usedHeight: well.columns === 1 ? pieceSide : stepDown * (well.rows - 1) + pieceSide * 1.35

            width: parent.width
            height: parent.height - words.height

            Repeater {
                model: well.expected

                HomePiece {
                    id: piece

                    required property int index
                    readonly property int column: index % well.columns
                    readonly property int row: Math.floor(index / well.columns)
                    readonly property real cell: floor.width / well.columns
                    readonly property real zigzag: well.columns > 1 && column % 2 === 1 ? floor.pieceSide * 0.35 : 0
                    readonly property real sway: well.columns > 1 ? (row % 2 === 0 ? 2 : -2) : 0

                    x: column * cell + (cell - width) / 2 + sway
                    y: (floor.height - floor.usedHeight) / 2 + row * floor.stepDown + zigzag
                    width: floor.pieceSide
                    height: floor.pieceSide
                    home: index < well.home
                    drawing: well.pieceDrawings.length > 0 ? well.pieceDrawings[index % well.pieceDrawings.length] : well.drawing
                    placeDrawing: well.placeDrawing
                }
            }
        }

        Words {
            id: words

            y: well.expected <= 0 ? (parent.height - height) / 2 : parent.height - height
            width: parent.width
            role: Theme.Row
            horizontalAlignment: Text.AlignHCenter
            color: Theme.pictureText
            spoken: false
            text: well.text
        }
    }
}
