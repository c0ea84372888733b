pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// More boxes for a build: for a child, or some that are nobody's yet. What would go in and what the
/// till would ask for is said first.
Column {
    id: more

    property list<string> designIds: []
    property list<string> designNames: []
    property string design: ""
    property list<string> childrenLeft: []
    property string thought: ""
    property list<string> thoughtLines: []
    property list<string> costLines: []
    property int some: 1
    /// What is thought about: it opens at the end.
    readonly property alias answer: answer

    signal designChosen(string design)
    signal childChosen(string child)
    signal allChosen()
    signal someChosen(int count)
    signal forgotten()
    signal added()
    signal designsWanted()

    spacing: Theme.gap

    SectionWords {
        width: more.width
        text: qsTr("More boxes")
    }

    LinkRow {
        objectName: "firstDesign"
        width: more.width
        visible: more.designIds.length === 0
        drawing: "item-box"
        text: qsTr("Say first what belongs in a box")
        onClicked: more.designsWanted()
    }

    ChipFlow {
        width: more.width
        visible: more.designIds.length > 1

        Repeater {
            model: more.designIds

            FilterChip {
                required property string modelData
                required property int index

                picked: modelData === more.design
                text: more.designNames[index] ?? ""
                onClicked: more.designChosen(modelData)
            }
        }
    }

    Words {
        width: more.width
        visible: more.childrenLeft.length > 0 && more.designIds.length > 0
        text: qsTr("A box for a child. What the home must avoid is filled in.")
    }

    ChipFlow {
        width: more.width
        visible: more.designIds.length > 0

        FilterChip {
            objectName: "allChildren"
            acts: true
            visible: more.childrenLeft.length > 1
            text: qsTr("All of them")
            accessibleName: qsTr("A box for each of them")
            onClicked: more.allChosen()
        }

        Repeater {
            model: more.childrenLeft

            FilterChip {
                required property string modelData

                acts: true
                text: modelData
                accessibleName: qsTr("A box for %1").arg(modelData)
                onClicked: more.childChosen(modelData)
            }
        }
    }

    Card {
        width: more.width
        visible: more.designIds.length > 0
        spacing: Theme.chipGap

        Stepper {
            width: parent.width
            text: qsTr("Boxes that are nobody's yet")
            value: more.some
            valueText: Numerals.of(value)
            from: 1
            to: 99
            lessName: qsTr("One box less")
            moreName: qsTr("One box more")
            onChanged: value => more.some = value
        }

        PaperButton {
            objectName: "someWanted"
            width: parent.width
            text: qsTr("What would they cost?")
            onClicked: more.someChosen(more.some)
        }
    }

    Card {
        id: answer

        objectName: "thought"
        width: more.width
        visible: more.thought.length > 0
        spacing: Theme.chipGap

        Words {
            width: parent.width
            role: Theme.Row
            heading: true
            text: more.thought
        }

        Repeater {
            model: more.thoughtLines

            Words {
                required property string modelData

                width: parent?.width ?? 0
                text: modelData
            }
        }

        Rule { width: parent.width }

        Words {
            width: parent.width
            strong: true
            text: more.costLines[0] ?? ""
        }

        PaperButton {
            objectName: "addThought"
            width: parent.width
            patch: true
            text: qsTr("Add to this build")
            onClicked: more.added()
        }

        StitchedLink {
            anchors.left: parent.left
            text: qsTr("Not after all")
            onClicked: more.forgotten()
        }

        Repeater {
            model: more.costLines.slice(1)

            Words {
                required property string modelData

                width: parent?.width ?? 0
                soft: true
                text: modelData
            }
        }
    }
}
