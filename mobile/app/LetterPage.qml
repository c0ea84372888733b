pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Design

/// The letters a switch writes with.
LetterBoard {
    id: page

    required property SwitchWalk walk

    field: page.walk.field
    onDone: page.walk.field = null
}
