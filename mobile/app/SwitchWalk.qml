pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One or two switches over every screen, and the letters they write with.
Item {
    id: walk

    required property AppScreens screens
    required property Appearance appearance
    /// The field that is written in; null: none.
    property FieldFrame field: null
    readonly property bool writing: walk.field !== null

    function frameOf(item: Item): FieldFrame {
        for (let above = item; above; above = above.parent) {
            const frame = above as FieldFrame
            if (frame)
                return frame
        }
        return null
    }

    onWritingChanged: {
        walk.screens.enabled = !walk.writing
        if (walk.writing) {
            board.setSource(Qt.resolvedUrl("LetterPage.qml"), { walk: walk })
        } else {
            board.setSource("")
            walk.screens.forceActiveFocus()
        }
    }

    SwitchScan {
        id: scan

        objectName: "scan"
        anchors.fill: parent
        root: board.item ? board.item as Item : walk.screens
        switches: walk.appearance.switches
        stepMs: 1000 * walk.appearance.scanSeconds
        onwardKey: walk.appearance.onwardKey
        leastTouchMs: walk.appearance.minimumTouchMs
        onWritingWanted: item => walk.field = walk.frameOf(item)
    }

    Loader {
        id: board

        anchors.fill: parent
        onLoaded: (board.item as Item).forceActiveFocus()
    }

    SwitchRing {
        area: scan.ring
        leaving: scan.leaving
    }

    Connections {
        target: walk.screens

        function onCurrentChanged() {
            scan.restart()
        }
    }
}
