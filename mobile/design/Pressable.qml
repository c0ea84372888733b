pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Lidlark.Design

/// What every pressed thing has in common: keys, the screen reader's Press, the focus ring,
/// a target that is large enough, and "not now" with its reason in words.
T.AbstractButton {
    id: control

    property string accessibleName: control.text
    property string notNowReason: ""
    property int ground: Theme.OnSheet
    property int paperRadius: Theme.radiusPaper
    property int ringOutset: 5
    property real startPadding: 0
    property real endPadding: control.startPadding
    /// A switch is on it.
    property bool lit: false
    /// Pressed several times running: a switch stays on it for another turn.
    property bool pressedOften: false
    readonly property bool notNow: control.notNowReason.length > 0
    readonly property color groundInk: control.ground === Theme.OnCloth ? Theme.clothText
                                     : control.ground === Theme.OnSafety ? Theme.safetyText
                                     : control.ground === Theme.OnPicture ? Theme.pictureText : Theme.ink

    /// What a tap does. In Qt 6.4 neither a key nor a screen reader's Press does it by itself.
    function press() {
        if (control.notNow)
            return
        if (control.checkable && !(control.autoExclusive && control.checked)) {
            control.toggle()
            control.toggled()
        }
        control.clicked()
    }

    /// A key that is held down is one press.
    function pressByKey(event: KeyEvent) {
        if (!event.isAutoRepeat)
            control.press()
    }

    /// A further part of an accessible name, set off from what stands before it.
    function sentence(part: string): string {
        return part.length > 0 ? ". " + part : ""
    }

    enabled: !control.notNow
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    leftPadding: control.mirrored ? control.endPadding : control.startPadding
    rightPadding: control.mirrored ? control.startPadding : control.endPadding
    implicitWidth: Math.max(Theme.touchTarget, control.implicitContentWidth + control.leftPadding + control.rightPadding)
    implicitHeight: Math.max(Theme.touchTarget, control.implicitContentHeight + control.topPadding + control.bottomPadding)

    // A question needs no full stop after it.
    Accessible.name: control.accessibleName.replace(/([.?!:؟۔])\. /g, "$1 ")
    Accessible.description: control.notNowReason
    Accessible.onPressAction: control.press()
    Keys.onReturnPressed: event => control.pressByKey(event)
    Keys.onEnterPressed: event => control.pressByKey(event)

    FocusRing {
        anchors.topMargin: control.topInset - control.ringOutset
        anchors.bottomMargin: control.bottomInset - control.ringOutset
        anchors.leftMargin: control.leftInset - control.ringOutset
        anchors.rightMargin: control.rightInset - control.ringOutset
        ground: control.ground
        paperRadius: control.paperRadius
        visible: control.visualFocus || control.lit
        z: 1
    }
}
