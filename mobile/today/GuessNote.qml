pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What an adult has guessed, in a dotted outline: it never stands in for what the child shows.
Item {
    id: note

    required property string text

    implicitHeight: words.implicitHeight + 2 * Theme.chipGap

    DashFrame {
        anchors.fill: parent
        colour: Theme.line
    }

    Words {
        id: words

        x: Theme.cardPadding
        y: Theme.chipGap
        width: note.width - 2 * Theme.cardPadding
        role: Theme.Reason
        text: note.text
    }
}
