pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Chips in rows, as many as there is room for.
Flow {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.chipGap
}
