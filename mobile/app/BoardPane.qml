pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The board of the one who packs, where there is room for it beside the page.
Loader {
    id: pane

    /// The AppScreens it lies on.
    required property FocusScope host
    required property bool wanted

    function show() {
        if (pane.wanted)
            pane.setSource(Qt.resolvedUrl("WorkbenchRoute.qml"), { screens: pane.host })
        else
            pane.source = ""
    }

    width: pane.wanted ? Theme.boardWidth : 0
    onWantedChanged: pane.show()
    Component.onCompleted: pane.show()
}
