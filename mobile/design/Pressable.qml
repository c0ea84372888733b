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
    readonly property bool notNow: control.notNowReason.length > 0
    readonly property color groundInk: control.ground === Theme.OnCloth ? Theme.clothText
                                     : control.ground === Theme.OnSafety ? Theme.safetyText
                                     : control.ground === Theme.OnPicture ? Theme.pictureText : Theme.ink

    enabled: !control.notNow
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    implicitWidth: Math.max(Theme.touchTarget, control.implicitContentWidth + control.leftPadding + control.rightPadding)
    implicitHeight: Math.max(Theme.touchTarget, control.implicitContentHeight + control.topPadding + control.bottomPadding)

    Accessible.role: Accessible.Button
    Accessible.name: control.accessibleName
    Accessible.description: control.notNowReason
    Accessible.onPressAction: control.click()
    Keys.onReturnPressed: control.click()
    Keys.onEnterPressed: control.click()

    FocusRing {
        anchors.topMargin: control.topInset - control.ringOutset
        anchors.bottomMargin: control.bottomInset - control.ringOutset
        anchors.leftMargin: control.leftInset - control.ringOutset
        anchors.rightMargin: control.rightInset - control.ringOutset
        ground: control.ground
        paperRadius: control.paperRadius
        visible: control.visualFocus
        z: 1
    }
}
