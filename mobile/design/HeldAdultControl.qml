pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Lidlark.Design

/// The way out of a child's screen: held for 1.2 s its ring thickens evenly until it meets the dot.
/// A short tap does nothing. On a keyboard Return or Space is held; a screen reader presses once,
/// as it cannot hold, and a switch twice.
T.AbstractButton {
    id: control

    property bool beside: false
    /// Its words keep to one line: for places that have more width than height.
    property bool low: false
    property bool keyHeld: false
    /// A switch is on it; it was pressed once, and the next press opens it.
    property bool lit: false
    property bool armed: false
    readonly property bool pressedTwice: true
    property real heldMs: 0
    readonly property bool holding: control.pressed || control.keyHeld
    readonly property real progress: control.heldMs / Theme.holdMs
    readonly property real shownProgress: Theme.reducedMotion ? Math.floor(control.progress * 3) / 3 : control.progress

    signal held()

    function press() {
        control.held()
    }

    focusPolicy: Qt.StrongFocus
    implicitWidth: Math.max(64, control.implicitContentWidth)
    implicitHeight: Math.max(control.beside ? Theme.touchTarget : 76, control.implicitContentHeight)
    Accessible.role: Accessible.Button
    Accessible.name: control.text
    Accessible.onPressAction: control.held()
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter) {
            control.keyHeld = true
            event.accepted = true
        }
    }
    Keys.onReleased: event => {
        if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && !event.isAutoRepeat) {
            control.keyHeld = false
            event.accepted = true
        }
    }
    onActiveFocusChanged: control.keyHeld = control.keyHeld && control.activeFocus
    onHoldingChanged: {
        if (control.holding) {
            holdingTime.restart()
        } else {
            holdingTime.stop()
            control.heldMs = 0
        }
    }
    onHeldMsChanged: {
        if (control.heldMs >= Theme.holdMs)
            control.held()
    }

    NumberAnimation {
        id: holdingTime

        target: control
        property: "heldMs"
        from: 0
        to: Theme.holdMs
        duration: Theme.holdMs
    }

    contentItem: Item {
        implicitWidth: control.beside ? words.implicitWidth + ring.width + Theme.cardPadding
                                      : Math.max(ring.width, 64, control.low ? longest.whole : longest.room)
        implicitHeight: control.beside ? Math.max(ring.height, words.implicitHeight)
                                       : ring.height + Theme.smallGap + words.implicitHeight

        LongestWord {
            id: longest

            font: words.font
            text: control.text
        }

        HoldRing {
            id: ring

            x: !control.beside ? (parent.width - width) / 2 : control.mirrored ? 0 : parent.width - width
            y: control.beside ? (parent.height - height) / 2 : 2
            colour: Theme.ink
            progress: control.armed ? 0.5 : control.shownProgress
        }

        Words {
            id: words

            anchors.right: control.beside ? ring.left : parent.right
            anchors.rightMargin: control.beside ? Theme.cardPadding : 0
            y: control.beside ? (parent.height - height) / 2 : ring.y + ring.height + 2
            width: control.beside ? implicitWidth : parent.width
            // Of these two the one grows less than the other.
            role: control.low ? Theme.TabWord : Theme.Caption
            wrapMode: control.low ? Text.NoWrap : Text.Wrap
            soft: true
            spoken: false
            horizontalAlignment: Text.AlignHCenter
            text: control.text
        }
    }

    FocusRing {
        ground: Theme.OnSheet
        visible: control.visualFocus || control.lit
    }
}
