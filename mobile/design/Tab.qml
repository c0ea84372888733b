pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One place to go to. The current one is a slip of paper on the cloth.
Pressable {
    id: tab

    property string sign: ""
    property bool current: false
    readonly property color wordColour: tab.current ? Theme.slipText : Theme.clothText

    ground: Theme.OnCloth
    implicitHeight: Math.max(56, tab.implicitContentHeight + tab.topPadding + tab.bottomPadding)
    topPadding: 5
    bottomPadding: 5
    Accessible.selectable: true
    Accessible.selected: tab.current

    background: Rectangle {
        radius: Theme.radiusPaper
        color: tab.current ? Theme.slip : "transparent"
        border.width: tab.down ? 2 : tab.hovered && !tab.current ? 1 : 0
        border.color: tab.wordColour
    }

    contentItem: Item {
        implicitHeight: column.implicitHeight

        Column {
            id: column

            anchors.verticalCenter: parent.verticalCenter
            width: parent.width
            spacing: 6 - Theme.scriptRoom

            Drawing {
                anchors.horizontalCenter: parent.horizontalCenter
                width: Theme.signSize
                height: Theme.signSize
                name: tab.sign
                inkColour: tab.wordColour
            }

            Words {
                width: parent.width
                role: Theme.TabWord
                strong: tab.current
                horizontalAlignment: Text.AlignHCenter
                color: tab.wordColour
                spoken: false
                text: tab.text
            }
        }
    }
}
