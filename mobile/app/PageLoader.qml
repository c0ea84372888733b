pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One page at a time, gone to with a short movement from the side on which reading goes on.
Loader {
    id: loader

    /// What there is beside the board, and where that begins.
    property real roomStart: 0
    property real room: 0
    /// Where the page begins: it lies in the middle of its room.
    readonly property real start: loader.roomStart + (loader.room - loader.width) / 2
    readonly property bool unsaved: (loader.item as Sheet)?.unsaved ?? false
    property real arriving: 0
    property bool fromTheLeft: false

    x: Math.round(loader.start) + loader.arriving * (loader.fromTheLeft ? -1 : 1)
    // On a screen much wider than a phone lying down, a page that an eye can still follow.
    width: loader.room < 130 * Theme.dotsPerMm ? loader.room : 110 * Theme.dotsPerMm
    focus: true
    onItemChanged: arrival.restart()

    ParallelAnimation {
        id: arrival

        NumberAnimation {
            target: loader
            property: "opacity"
            from: Theme.reducedMotion ? 1 : 0
            to: 1
            duration: Theme.pageMs
            easing.type: Easing.OutCubic
        }
        NumberAnimation {
            target: loader
            property: "arriving"
            from: Theme.reducedMotion ? 0 : Theme.signSize
            to: 0
            duration: Theme.pageMs
            easing.type: Easing.OutCubic
        }
    }
}
