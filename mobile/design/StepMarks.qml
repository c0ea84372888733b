pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// How far along: done marks are full, the one in hand is long, the ones to come are rings.
Item {
    id: marks

    property int count: 0
    property int current: 0
    property string text: ""

    implicitWidth: row.implicitWidth
    // Without their words the next line would stand close.
    implicitHeight: row.implicitHeight + (Theme.largeText ? Theme.gap : 0)
    Accessible.role: Accessible.StaticText
    Accessible.name: marks.text

    Row {
        id: row

        anchors.left: parent.left
        spacing: 8

        Repeater {
            model: marks.count

            Rectangle {
                required property int index

                y: (words.height - height) / 2
                width: index === marks.current ? 30 : 12
                height: 10
                radius: 5
                antialiasing: true
                color: index > marks.current ? "transparent" : Theme.accent
                border.width: 2.5
                border.color: Theme.accent
            }
        }

        Words {
            id: words

            role: Theme.Caption
            soft: true
            spoken: false
            visible: !Theme.largeText // the marks say it, and the step needs the room
            text: marks.text
        }
    }
}
