pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Shapes
import Lidlark.Design

/// One week of the chart of use: a printed bar with its number over it; none is a line of dots.
Item {
    id: bar

    required property int pieces
    /// As the language writes the number.
    property string words: bar.pieces.toString()
    /// px for one piece.
    required property real unit
    readonly property int offset: 3
    readonly property real room: Math.min(bar.width - 6, 30)

    /// Slanted ink lines, so that a bar is seen without any colour.
    function hatch(width: real, height: real): list<var> {
        const lines = []
        for (let at = 7; at < width + height; at += 7) {
            const right = Math.min(at, width)
            const low = Math.min(at, height)
            lines.push([Qt.point(right, at - right), Qt.point(at - low, low)])
        }
        return lines
    }

    Words {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: face.top
        anchors.bottomMargin: 3
        role: Theme.Caption
        // A week without use is an empty place.
        visible: bar.pieces > 0
        strong: true
        spoken: false
        color: Theme.pictureText
        text: bar.words
    }

    Rectangle {
        x: face.x + bar.offset
        y: face.y + bar.offset
        width: face.width
        height: face.height - bar.offset
        visible: bar.pieces > 0
        color: Theme.tint
    }

    Item {
        id: face

        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        width: bar.room
        height: Math.max(2, bar.pieces * bar.unit)

        Shape {
            anchors.fill: parent
            visible: bar.pieces > 0

            ShapePath {
                strokeColor: Theme.drawingInk
                strokeWidth: 1.2
                fillColor: "transparent"

                PathMultiline { paths: bar.hatch(face.width, face.height) }
            }
        }

        Rectangle {
            anchors.fill: parent
            visible: bar.pieces > 0
            color: "transparent"
            border.width: 2
            border.color: Theme.drawingInk
        }
    }
}
