pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Lidlark.Design

/// Where the keyboard is: a page begins at its heading, and a control that goes away while it has
/// the focus hands it to the next one.
Item {
    id: place

    property Item last: null
    /// How it came there: what was reached by key shows its ring, what was touched does not.
    property int reason: Qt.OtherFocusReason

    /// The first heading below @p item; null: none.
    function headingIn(item: Item): Item {
        for (const child of Array.from(item.children)) {
            const words = child as Words
            if (words && words.visible && words.heading && words.text.length > 0)
                return words
            const found = child.visible ? place.headingIn(child) : null
            if (found)
                return found
        }
        return null
    }

    function arriveOn(page: Item) {
        place.last = null
        page.forceActiveFocus()
        place.headingIn(page)?.forceActiveFocus()
    }

    /// The next control after one that is gone; what stood around it may come first and is none.
    function controlAfter(gone: Item): Item {
        let next = gone.nextItemInFocusChain()
        while (next && next !== gone && !(next.activeFocusOnTab && next.visible && next.enabled)) {
            const further = next.nextItemInFocusChain()
            if (further === next)
                return null
            next = further
        }
        return next
    }

    Connections {
        target: place.Window.window

        function onActiveFocusItemChanged() {
            const gone = place.last
            const now = place.Window.activeFocusItem
            const reason = place.reason
            place.last = now
            place.reason = (now as T.Control)?.focusReason ?? Qt.OtherFocusReason
            if (gone && now && gone !== now && !(gone.enabled && gone.visible))
                place.controlAfter(gone)?.forceActiveFocus(reason)
        }
    }
}
