pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Steps one under the other, joined by a running stitch: those done are full, the one that stands
/// is bold with its line, those to come are rings.
Column {
    id: path

    property list<string> steps
    /// Index of the step that stands; -1: none yet.
    property int current: -1
    property string note: ""
    property string text: ""
    readonly property int dot: 14
    readonly property int markRoom: 30

    width: parent ? parent.width : implicitWidth
    spacing: Theme.chipGap
    Accessible.role: Accessible.StaticText
    Accessible.name: path.text

    Repeater {
        model: path.steps

        Item {
            id: step

            required property string modelData
            required property int index
            readonly property bool done: step.index <= path.current
            readonly property bool last: step.index === path.steps.length - 1

            width: path.width
            implicitHeight: words.height

            Rectangle {
                id: mark

                anchors.left: parent.left
                anchors.leftMargin: 3
                y: Math.max(0, (word.height - height) / 2)
                width: path.dot
                height: path.dot
                radius: path.dot / 2
                antialiasing: true
                color: step.done ? Theme.accent : "transparent"
                border.width: 3
                border.color: Theme.accent
            }

            StitchLine {
                anchors.horizontalCenter: mark.horizontalCenter
                y: mark.y + path.dot + 2
                width: 4
                height: step.height + path.spacing - path.dot - 4
                visible: !step.last
                thickness: 3
                on: 5
                off: 4
                colour: Theme.accent
            }

            Column {
                id: words

                anchors.left: parent.left
                anchors.leftMargin: path.markRoom
                anchors.right: parent.right

                Words {
                    id: word

                    width: parent.width
                    strong: step.index === path.current
                    soft: !step.done
                    spoken: false
                    text: step.modelData
                }

                Words {
                    width: parent.width
                    role: Theme.Reason
                    soft: true
                    spoken: false
                    visible: step.index === path.current && text.length > 0
                    text: path.note
                }
            }
        }
    }
}
