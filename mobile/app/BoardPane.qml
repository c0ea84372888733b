pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The board of the one who packs, or the list that the page is one of, where there is room for it
/// beside the page. It waits while something on the page is not kept yet.
Item {
    id: pane

    /// The AppScreens it lies on.
    required property FocusScope host
    /// The route of what lies here; empty: nothing.
    required property string list
    /// Something is written on the page that opening another would lose.
    required property bool held

    function show() {
        if (pane.list.length > 0)
            lying.setSource(Qt.resolvedUrl(pages.fileOf(pane.list)), { screens: pane.host })
        else
            lying.source = ""
    }

    width: pane.list.length > 0 ? Theme.boardWidth : 0
    onListChanged: pane.show()
    Component.onCompleted: pane.show()

    PageNames { id: pages }

    Loader {
        id: lying

        anchors.fill: parent
        enabled: !pane.held
    }

    // A veil, since what scrolls under the head of a list would show through the list itself.
    Rectangle {
        anchors.fill: lying
        visible: pane.held
        color: Theme.sheet
        opacity: 0.6
    }

    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: note.height + 2 * Theme.margin
        visible: pane.held && pane.list.length > 0
        color: Theme.sheet

        ProblemNote {
            id: note

            objectName: "listWaits"
            x: Theme.margin
            y: Theme.margin
            width: parent.width - 2 * Theme.margin
            text: pane.held ? qsTr("What you wrote is not kept yet. Keep it, or go back, before you open something else.") : ""
        }
    }
}
