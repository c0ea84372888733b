pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The control an adult holds, in the lower corner of the hand that holds the phone.
HeldAdultControl {
    id: hold

    property real side: Theme.childMargin
    readonly property bool atStart: Theme.leftHanded !== hold.LayoutMirroring.enabled

    x: hold.atStart ? hold.side : parent.width - width - hold.side
    y: parent.height - height - Theme.gap
}
