pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One plain sentence when something did not work, and one way on.
Item {
    id: problem

    property string text: ""
    property string actionText: ""

    signal action()

    width: parent ? parent.width : implicitWidth
    visible: problem.text.length > 0
    implicitWidth: column.implicitWidth + 2 * Theme.cardPadding
    implicitHeight: column.height + 2 * Theme.cardPadding
    Accessible.role: Accessible.AlertMessage
    Accessible.name: problem.text

    PaperEdge {
        anchors.fill: parent
        edgeColour: Theme.ink
        edgeWidth: 2
    }

    Column {
        id: column

        x: Theme.cardPadding + 2
        y: Theme.cardPadding
        width: problem.width - 2 * column.x

        Words {
            width: parent.width
            spoken: false
            text: problem.text
        }

        StitchedLink {
            anchors.left: parent.left
            width: Math.min(implicitWidth, parent.width)
            visible: text.length > 0
            text: problem.actionText
            onClicked: problem.action()
        }
    }
}
