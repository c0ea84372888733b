pragma ComponentBehavior: Bound

import QtQuick

/// How wide the longest word of a text is: what its place needs, if no word is to be broken.
FontMetrics {
    id: metrics

    property string text: ""
    // The size is only read so that the width follows it.
    readonly property real room: metrics.font.pixelSize > 0
        ? metrics.laidOut(Math.max(...metrics.text.split(/[ -]/).map(word => metrics.advanceWidth(word)))) : 0
    /// The same of all of it.
    readonly property real whole: metrics.font.pixelSize > 0 ? metrics.laidOut(metrics.advanceWidth(metrics.text)) : 0

    /// Laid out, letters take a little more than their advances: without it a line would be broken
    /// that has room (Qt 6.4.2).
    function laidOut(advance: real): real {
        return Math.ceil(advance * 1.015) + 1
    }
}
