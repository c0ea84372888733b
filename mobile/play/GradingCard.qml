pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One way to make it easier or harder; a tap shows the next way, where there are several.
GradeCard {
    id: card

    required property list<string> lines
    property int shown: 0

    note: card.lines.length > 0 ? card.lines[card.shown % card.lines.length] : ""
    onClicked: card.shown += 1
}
