pragma ComponentBehavior: Bound

import QtQuick

/// Tells a screen reader what has changed elsewhere on the page. Qt 6.4 has no announcement of its
/// own: an alert that appears is read out on every platform, and is gone again before somebody who
/// goes through the page meets it. What stands there when a page opens is not news.
Item {
    id: said

    property string text: ""
    property bool begun: false
    property bool fresh: false
    readonly property int heardMs: 3000

    visible: said.fresh
    onTextChanged: {
        if (!said.begun)
            return
        said.fresh = false // so that one news after another appears anew
        said.fresh = said.text.length > 0
        past.restart()
    }
    Component.onCompleted: said.begun = true
    Accessible.role: Accessible.AlertMessage
    Accessible.name: said.text

    Timer {
        id: past

        interval: said.heardMs
        onTriggered: said.fresh = false
    }
}
