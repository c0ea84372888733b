pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Two things of equal weight side by side; one over the other in large text.
EvenGrid {
    id: pair

    width: parent ? parent.width : implicitWidth
    columns: Theme.largeText ? 1 : 2
    spacing: Theme.cardPadding
    mirrored: pair.LayoutMirroring.enabled
}
