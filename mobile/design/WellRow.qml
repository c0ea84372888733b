pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Wells of the tray side by side; a list of rows in large text.
EvenGrid {
    id: wells

    width: parent ? parent.width : implicitWidth
    columns: Theme.largeText ? 1 : 0
    spacing: 6
    mirrored: wells.LayoutMirroring.enabled
}
