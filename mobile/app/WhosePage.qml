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
    readonly property list<string> without: ["", "problem", "welcome", "clinic", "home-first", "another-family", "whose", "today", "box", "everything",
                                                 "packing", "pack-box", "pack-item", "print-build", "tend", "recall", "shelf", "supply", "packers",
                                                 "own-activities", "own-activity", "own-items", "own-item", "builds", "build", "build-box", "build-sheet", "designs", "design",
                                                 "workbench", "box-of-child", "revise", "coaching", "round", "report"]

    /// A child's pictures keep their size (checkin.md 10): on a small phone they have all the room.
    readonly property list<string> childs: ["kite", "kite-after"]
    readonly property real leastForChild: (Theme.largeText ? 125 : 91) * Theme.dotsPerMm
    readonly property bool fits: !strip.childs.includes(strip.route)
                                 || (strip.parent?.height ?? 0) - strip.implicitHeight >= strip.leastForChild

    objectName: "whosePage"
    visible: strip.household.several && !strip.without.includes(strip.route) && strip.fits
    height: strip.visible ? strip.implicitHeight : 0
    text: strip.household.childTitle
}
