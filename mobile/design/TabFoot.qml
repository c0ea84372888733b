pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The cloth with the tabs on it. Children: Tab, each with its `current` set by the caller.
ClothFoot {
    id: foot

    default property alias tabs: grid.data
    property string name: ""
    property int shown: 4

    topSpace: 18
    bottomSpace: 6
    sideSpace: 8

    EvenGrid {
        id: grid

        width: parent.width
        spacing: Theme.smallGap
        columns: Theme.largeText && foot.shown > 3 ? 2 : 0
        mirrored: grid.LayoutMirroring.enabled
        Accessible.role: Accessible.PageTabList
        Accessible.name: foot.name
    }
}
