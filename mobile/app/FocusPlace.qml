pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Where the keyboard is: a page begins at its heading, and a control that goes away while it has
/// the focus hands it to the next one.
QtObject {
    id: place

    required property Item focused
    property Item last: null

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

    onFocusedChanged: {
        const gone = place.last
        place.last = place.focused
        if (gone && place.focused && gone !== place.focused && !(gone.enabled && gone.visible))
            gone.nextItemInFocusChain().forceActiveFocus(Qt.TabFocusReason)
    }
}
