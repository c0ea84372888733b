pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A piece of text in one of the roles of the theme. Wraps, never cut, aligned to the start.
Text {
    id: words

    property int role: Theme.Body
    property bool soft: false
    property bool strong: Theme.boldByRole(words.role)
    property bool heading: words.role === Theme.Title
    property bool spoken: true
    /// A name in another language than the app's may be in the other script.
    property bool arabicScript: Theme.arabicScript

    font: Theme.font(words.role, words.strong, Theme.textScale, words.arabicScript)
    lineHeightMode: Text.FixedHeight
    lineHeight: Theme.lineHeight(words.role, Theme.textScale, words.arabicScript)
    topPadding: -Theme.lift(words.role, Theme.textScale, words.arabicScript)
    bottomPadding: -Theme.trim(words.role, Theme.textScale, words.arabicScript)
    color: words.soft ? Theme.inkSoft : Theme.ink
    wrapMode: Text.Wrap
    horizontalAlignment: Text.AlignLeft
    textFormat: Text.PlainText

    Accessible.role: words.heading ? Accessible.Heading : Accessible.StaticText
    Accessible.name: words.text
    Accessible.ignored: !words.spoken
}
