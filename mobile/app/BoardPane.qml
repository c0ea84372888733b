pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The board of the one who packs, or the list that the page is one of, where there is room for it
/// beside the page.
Loader {
    id: pane

    /// The AppScreens it lies on.
    required property FocusScope host
    /// The route of what lies here; empty: nothing.
    required property string list

    function show() {
        if (pane.list.length > 0)
            pane.setSource(Qt.resolvedUrl(pages.fileOf(pane.list)), { screens: pane.host })
        else
            pane.source = ""
    }

    width: pane.list.length > 0 ? Theme.boardWidth : 0
    onListChanged: pane.show()
    Component.onCompleted: pane.show()

    PageNames { id: pages }
}
