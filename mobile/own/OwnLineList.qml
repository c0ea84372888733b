pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// Lines that are written one by one, each with its way out; of a line for easier or harder also
/// what it changes.
Column {
    id: list

    required property OwnLines lines
    /// "Step %1": what each line is called.
    required property string label
    required property string addText
    property list<string> levers: []

    spacing: Theme.gap

    Repeater {
        model: list.lines

        Column {
            id: line

            required property int index
            required property string words
            required property int lever
            readonly property string title: list.label.arg(Numerals.of(line.index + 1))

            width: list.width
            spacing: Theme.smallGap

            PaperArea {
                id: area

                width: line.width
                lines: 1
                label: line.title
                onEdited: list.lines.write(line.index, area.text)
                Component.onCompleted: area.text = line.words
            }

            ChipFlow {
                width: line.width
                visible: list.levers.length > 0

                Repeater {
                    model: list.levers

                    FilterChip {
                        id: chip

                        required property string modelData
                        required property int index

                        text: chip.modelData
                        accessibleName: qsTr("%1: it changes the %2").arg(line.title).arg(chip.modelData)
                        picked: line.lever === chip.index
                        onClicked: list.lines.choose(line.index, chip.index)
                    }
                }
            }

            StitchedLink {
                anchors.left: parent.left
                width: Math.min(implicitWidth, line.width)
                text: qsTr("Take this line out")
                accessibleName: line.title + ". " + text
                onClicked: list.lines.takeOut(line.index)
            }
        }
    }

    PaperButton {
        anchors.left: parent.left
        width: Math.min(implicitWidth, list.width)
        visible: list.lines.count < list.lines.most
        text: list.addText
        onClicked: list.lines.add()
    }
}
