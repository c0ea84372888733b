pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The head of a screen one goes back from. Children (signs) lie at its end.
Rectangle {
    id: bar

    default property alias trailing: end.data
    property string text: ""
    property string backName: ""
    property bool heading: true

    signal back()

    /// Another page of one screen: a screen reader goes on from its title.
    function readOut() {
        title.forceActiveFocus()
    }

    width: parent ? parent.width : implicitWidth
    implicitWidth: 320
    implicitHeight: Math.max(52, title.implicitHeight + 16)
    color: Theme.sheet

    SignButton {
        id: goBack

        anchors.left: parent.left
        y: (52 - height) / 2
        sign: "sign-back"
        otherWaySign: "sign-on"
        ringOutset: -1 // It lies at the very edge: the ring goes inside.
        accessibleName: bar.backName
        visible: bar.backName.length > 0
        onClicked: bar.back()
    }

    Words {
        id: title

        anchors.left: goBack.right
        anchors.leftMargin: bar.backName.length > 0 ? -2 : Theme.margin + 2 - goBack.width
        anchors.right: end.left
        anchors.verticalCenter: parent.verticalCenter
        role: Theme.largeText ? Theme.Label : Theme.Heading
        heading: bar.heading
        text: bar.text
    }

    Row {
        id: end

        anchors.right: parent.right
        anchors.rightMargin: 4
        y: (52 - height) / 2
    }
}
