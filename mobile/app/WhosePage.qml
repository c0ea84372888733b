pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// The child's alias on top of every page about that child, where a phone has several boxes.
ChildStrip {
    id: strip

    required property Household household
    required property string route
    /// Pages that are about no child, and those that say whose in their own title.
    readonly property list<string> without: ["", "problem", "welcome", "another-family", "whose", "today", "box", "everything"]

    objectName: "whosePage"
    visible: strip.household.several && !strip.without.includes(strip.route)
    height: strip.visible ? strip.implicitHeight : 0
    text: strip.household.childTitle
}
