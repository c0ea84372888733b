pragma ComponentBehavior: Bound

import QtQuick

/// One switch for the whole screen: the pictures are lit one after the other, and any key or a tap
/// anywhere picks the one that is lit. There is no last round (checkin.md 10: no time limit).
Item {
    id: scan

    required property list<string> pictures
    required property int seconds
    property int at: 0
    property bool walking: scan.enabled
    readonly property string lit: scan.walking ? scan.pictures[scan.at] : ""

    signal moved(string picture)
    signal picked(string picture)

    /// After an answer nothing is lit, until the switch asks for another round.
    function press() {
        if (scan.walking) {
            const picture = scan.lit
            scan.walking = false
            scan.picked(picture)
        } else {
            scan.at = 0
            scan.walking = true
        }
    }

    enabled: scan.seconds > 0
    visible: scan.enabled
    focus: scan.enabled
    onLitChanged: {
        if (scan.lit.length > 0)
            scan.moved(scan.lit)
    }
    // Tab still leads an adult to the held control.
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Tab || event.key === Qt.Key_Backtab || event.key === Qt.Key_Escape || event.key === Qt.Key_Back)
            return
        event.accepted = true
        if (!event.isAutoRepeat)
            scan.press()
    }

    MouseArea {
        anchors.fill: parent
        onClicked: scan.press()
    }

    Timer {
        interval: 1000 * scan.seconds
        running: scan.walking
        repeat: true
        onTriggered: scan.at = (scan.at + 1) % scan.pictures.length
    }
}
