pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One page at a time, gone to with a short movement from the side on which reading goes on.
Loader {
    id: loader

    /// Where the page begins.
    property real start: 0
    property real arriving: 0
    property bool fromTheLeft: false

    x: Math.round(loader.start) + loader.arriving * (loader.fromTheLeft ? -1 : 1)
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
