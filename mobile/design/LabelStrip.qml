pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Words that a regulation puts on a label, letter by letter, above everything else: a safety-alert
/// triangle before each, and where they come from. Never shortened, never translated.
Rectangle {
    id: strip

    property list<string> words
    property string source: ""
    /// In large text it grows as titles do, and leaves room for what is played.
    readonly property int wordRole: Theme.largeText ? Theme.TabWord : Theme.Caption

    visible: strip.words.length > 0
    implicitWidth: column.implicitWidth + 2 * (Theme.margin + 2)
    implicitHeight: strip.visible ? column.implicitHeight + 2 * Theme.cardPadding : 0
    color: Theme.safetyText

    Column {
        id: column

        x: Theme.margin + 2
        y: Theme.cardPadding
        width: strip.width - 2 * column.x
        spacing: Theme.smallGap

        Repeater {
            model: strip.words

            Item {
                id: line

                required property string modelData

                width: column.width
                height: Math.max(text.height, Theme.signSize)

                Accessible.role: Accessible.AlertMessage
                Accessible.name: line.modelData

                Drawing {
                    id: sign

                    anchors.left: parent.left
                    width: Theme.signSize
                    height: Theme.signSize
                    name: "sign-warning"
                    inkColour: Theme.safety
                }

                Words {
                    id: text

                    anchors.left: sign.right
                    anchors.right: parent.right
                    anchors.leftMargin: Theme.chipGap
                    role: strip.wordRole
                    strong: true
                    spoken: false
                    color: Theme.safety
                    text: line.modelData
                }
            }
        }

        Words {
            width: parent.width
            visible: strip.source.length > 0
            role: strip.wordRole
            spoken: false
            color: Theme.safety
            text: strip.source
        }
    }
}
