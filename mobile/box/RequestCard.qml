pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One item: ask for more of it, see how far the asking has come, count in what came.
Column {
    id: request

    property string title: ""
    /// On the item's own page: its name and picture stand above.
    property bool alone: false
    property string name: ""
    property string drawing: ""
    property string note: ""
    property bool isOpen: false
    property int step: -1
    property string saidBy: ""
    property string spoken: ""
    property int missing: 1
    property list<string> steps
    /// The phone of the one who packs.
    property bool packs: false
    property bool arrivedOpen: false
    property int pieces: request.missing

    readonly property string arrivedWords: qsTr("It has come: count it in")

    signal askWanted()
    signal moved(int step)
    signal arrived(int pieces)

    function countArrived() {
        request.pieces = request.missing
        request.arrivedOpen = true
    }

    spacing: Theme.gap

    SectionWords {
        width: request.width
        visible: text.length > 0
        text: request.title
    }

    Card {
        width: request.width
        spacing: Theme.gap

        PicturedWords {
            visible: !request.alone
            drawing: request.drawing
            text: request.name
            note: request.note
        }

        StepPath {
            visible: request.isOpen
            steps: request.steps
            current: request.step
            note: request.saidBy
            text: request.spoken
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            visible: request.alone && !request.isOpen && request.step >= 0
            text: request.spoken
        }

        PaperButton {
            objectName: "ask"
            width: parent.width
            visible: !request.isOpen
            accessibleName: request.name + ": " + text
            text: request.alone ? qsTr("Ask for more") : qsTr("Ask for it")
            onClicked: request.askWanted()
        }

        ChipFlow {
            visible: request.packs && request.isOpen

            Repeater {
                model: request.steps.slice(1, -1)

                FilterChip {
                    id: chip

                    required property string modelData
                    required property int index
                    readonly property int step: chip.index + 1

                    accessibleName: request.name + ": " + chip.modelData
                    text: chip.modelData
                    picked: request.step >= chip.step
                    onClicked: request.moved(chip.step)
                }
            }
        }

        PaperButton {
            objectName: "arrived"
            width: parent.width
            visible: request.isOpen && !request.packs && !request.arrivedOpen
            accessibleName: request.name + ": " + text
            text: request.arrivedWords
            onClicked: request.countArrived()
        }

        StitchedLink {
            objectName: "arrivedUnasked"
            anchors.left: parent.left
            width: Math.min(implicitWidth, parent.width)
            visible: !request.isOpen && !request.packs && !request.arrivedOpen
            accessibleName: request.name + ": " + text
            text: request.arrivedWords
            onClicked: request.countArrived()
        }

        Stepper {
            width: parent.width
            visible: request.arrivedOpen
            text: qsTr("How many came?")
            value: request.pieces
            valueText: Numerals.of(value)
            from: 1
            to: 99
            lessName: qsTr("One less: %1").arg(request.name)
            moreName: qsTr("One more: %1").arg(request.name)
            onChanged: value => request.pieces = value
        }

        PaperButton {
            objectName: "countIn"
            width: parent.width
            visible: request.arrivedOpen
            patch: true
            accessibleName: request.name + ": " + text
            text: qsTr("Put it in the box")
            onClicked: request.arrived(request.pieces)
        }
    }
}
