pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The reason why something cannot be pressed now, under its words.
Words {
    role: Theme.Caption
    soft: true
    spoken: false
    visible: text.length > 0
}
