pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// Solids that are measured: their shape, and as many sizes as the shape has.
Column {
    id: list

    required property OwnSolids solids
    required property string label
    property string addText: ""

    spacing: Theme.gap

    Repeater {
        model: list.solids

        Column {
            id: solid

            required property int index
            required property int shape
            required property list<string> labels
            required property list<string> sizes
            required property list<string> problems
            required property string part
            required property bool cup
            readonly property string title: list.solids.named ? list.label.arg(Numerals.of(solid.index + 1)) : list.label

            width: list.width
            spacing: Theme.gap

            PaperField {
                id: name

                width: solid.width
                visible: list.solids.named
                label: solid.title
                maximumLength: 60
                onEdited: list.solids.call(solid.index, name.text)
                Component.onCompleted: name.text = solid.part
            }

            SectionWords {
                width: solid.width
                visible: !list.solids.named
                text: solid.title
            }

            ChipFlow {
                width: solid.width

                Repeater {
                    model: list.solids.shapes

                    FilterChip {
                        id: chip

                        required property string modelData
                        required property int index

                        text: chip.modelData
                        accessibleName: solid.title + ": " + chip.text
                        picked: solid.shape === chip.index
                        onClicked: list.solids.choose(solid.index, chip.index)
                    }
                }
            }

            Pair {
                columns: Theme.largeText || solid.labels.length === 1 ? 1 : solid.labels.length
                visible: solid.labels.length > 0

                Repeater {
                    model: solid.labels

                    PaperField {
                        id: size

                        required property string modelData
                        required property int index

                        objectName: "size-" + size.index
                        label: size.modelData
                        accessibleName: solid.title + ": " + size.label
                        maximumLength: 8
                        inputMethodHints: Qt.ImhFormattedNumbersOnly
                        problem: solid.problems[size.index] ?? ""
                        onEdited: list.solids.write(solid.index, size.index, size.text)
                        Component.onCompleted: size.text = solid.sizes[size.index] ?? ""
                    }
                }
            }

            ChipFlow {
                width: solid.width
                visible: list.solids.named

                FilterChip {
                    text: qsTr("A suction cup, or the tip of a dart")
                    picked: solid.cup
                    onClicked: list.solids.turnCup(solid.index)
                }
            }

            StitchedLink {
                anchors.left: parent.left
                width: Math.min(implicitWidth, solid.width)
                visible: list.addText.length > 0
                text: qsTr("Take these sizes out")
                accessibleName: solid.title + ". " + text
                onClicked: list.solids.takeOut(solid.index)
            }
        }
    }

    PaperButton {
        anchors.left: parent.left
        width: Math.min(implicitWidth, list.width)
        visible: list.addText.length > 0 && list.solids.count < list.solids.most
        text: list.addText
        onClicked: list.solids.add()
    }
}
