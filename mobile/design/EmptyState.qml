pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Nothing here yet: a drawing, what that means, and what can be done.
Column {
    id: empty

    property string drawing: ""
    property string text: ""
    property string note: ""
    property string actionText: ""

    signal action()

    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap
    topPadding: Theme.sectionGap
    bottomPadding: Theme.sectionGap

    Rectangle {
        anchors.left: parent.left
        width: Theme.itemLarge + 2 * Theme.cardPadding
        height: width
        radius: Theme.radiusPaper
        color: Theme.picture
        border.width: Theme.cardEdgeWidth
        border.color: Theme.cardEdge
        visible: empty.drawing.length > 0

        Drawing {
            anchors.centerIn: parent
            width: Theme.itemLarge
            height: Theme.itemLarge
            name: empty.drawing
        }
    }

    Words {
        width: parent.width
        role: Theme.Heading
        text: empty.text
    }

    Words {
        width: parent.width
        soft: true
        visible: text.length > 0
        text: empty.note
    }

    PaperButton {
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        visible: text.length > 0
        patch: true
        text: empty.actionText
        onClicked: empty.action()
    }
}
