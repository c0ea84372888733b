pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A straw tag, turned a little, with one word on it: low, drying, which?
Rectangle {
    id: tag

    property string text: ""
    /// Where there is less room, the word breaks.
    property real room: tag.wholeWidth
    readonly property real wholeWidth: Math.ceil(metrics.advanceWidth) + 15

    implicitWidth: Math.min(tag.room, tag.wholeWidth)
    implicitHeight: Math.max(25, word.height + 5)
    rotation: -3
    antialiasing: true
    color: Theme.tint
    radius: Theme.radiusChip
    border.width: 1.5
    border.color: Theme.drawingInk

    TextMetrics {
        id: metrics

        font: word.font
        text: tag.text
    }

    Words {
        id: word

        anchors.centerIn: parent
        width: Math.min(tag.wholeWidth - 14, tag.width - 6)
        horizontalAlignment: Text.AlignHCenter
        role: Theme.Caption
        strong: true
        color: Theme.drawingInk
        spoken: false
        text: tag.text
    }
}
