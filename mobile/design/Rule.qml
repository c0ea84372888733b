pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A quiet line between two rows.
Rectangle {
    implicitWidth: Theme.touchTarget
    implicitHeight: Theme.cardEdgeWidth
    color: Theme.edge
}
