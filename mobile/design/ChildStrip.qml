pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Whose page this is, over everything else: where a phone has several children's boxes.
Rectangle {
    id: strip

    property string text: ""

    implicitHeight: name.implicitHeight + 2 * Theme.smallGap
    color: Theme.sheet

    Words {
        id: name

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: Theme.margin + 2
        anchors.rightMargin: Theme.margin + 2
        anchors.verticalCenter: parent.verticalCenter
        role: Theme.Caption
        strong: true
        text: strip.text
    }

    Rule {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
    }
}
