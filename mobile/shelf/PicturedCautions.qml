pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The drawing of a thing, and in a few words what has to be minded about it.
Item {
    id: pictured

    property string drawing: ""
    property string cautions: ""

    implicitHeight: Math.max(ground.height, words.height)

    Rectangle {
        id: ground

        anchors.left: parent.left
        width: Theme.itemLarge
        height: width
        radius: Theme.radiusPaper
        color: Theme.scheme === Theme.Dark ? Theme.picture : "transparent"

        Drawing {
            anchors.fill: parent
            name: pictured.drawing
        }
    }

    Column {
        id: words

        anchors.left: ground.right
        anchors.leftMargin: Theme.cardPadding
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.smallGap

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            text: qsTr("The catalogue says")
        }

        Words {
            width: parent.width
            role: Theme.Row
            text: pictured.cautions.length > 0 ? pictured.cautions : qsTr("Nothing to be careful with")
        }
    }
}
