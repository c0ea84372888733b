pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The sign "opens": points the way the words run.
Drawing {
    property bool mirrored: false

    width: Theme.signSize
    height: Theme.signSize
    name: mirrored ? "sign-back" : "sign-on"
    inkColour: Theme.ink
}
