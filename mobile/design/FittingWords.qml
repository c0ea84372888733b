pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Words whose place is narrow: where the longest of them would be broken, all are set smaller.
Words {
    id: words

    property int usualRole: Theme.Label
    property int smallerRole: Theme.TabWord
    property real room: words.width
    /// On one line, in the usual size: what it may ask for, as its own depends on what it got.
    readonly property real usualWidth: longest.whole

    role: longest.room > words.room ? words.smallerRole : words.usualRole
    strong: true

    LongestWord {
        id: longest

        font: Theme.font(words.usualRole, words.strong, Theme.textScale, Theme.arabicScript)
        text: words.text
    }
}
