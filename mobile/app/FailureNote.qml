pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What could not be done, above the page, which makes room: it may begin with a caution. A long
/// note scrolls within its share of the height.
Flickable {
    id: place

    required property real most
    property alias text: note.text
    property alias actionText: note.actionText
    readonly property bool said: place.text.length > 0

    signal action()

    height: place.said ? Math.min(place.most, place.contentHeight) : 0
    visible: place.said
    contentHeight: note.height + 2 * Theme.margin
    boundsBehavior: Flickable.StopAtBounds
    interactive: place.contentHeight > place.height
    clip: place.interactive
    onTextChanged: place.contentY = 0

    ProblemNote {
        id: note

        objectName: "failed"
        x: Theme.margin
        y: Theme.margin
        width: place.width - 2 * Theme.margin
        onAction: place.action()
    }
}
