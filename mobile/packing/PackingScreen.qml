pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Packing

/// The packing table: each box of a build, and how far it is.
Sheet {
    id: screen

    required property Household household
    property string build: ""
    /// What stands open beside the list; empty: nothing of it.
    property string opened: ""
    readonly property alias shownBuild: table.build

    signal done()
    signal buildChosen(string build)
    signal boxWanted(string code)
    signal byItemWanted()
    signal printWanted(string what)
    signal tendWanted()
    signal buildsWanted()
    signal recallWanted()
    signal packersWanted()

    PackTableViewModel {
        id: table

        household: screen.household
        build: screen.build
    }

    header: TitleBar {
        text: table.name.length > 0 ? table.name : qsTr("Packing")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    ProblemNote {
        width: screen.contentWidth
        text: table.problem
    }

    EmptyState {
        width: screen.contentWidth
        visible: table.count === 0
        drawing: "item-box"
        text: qsTr("No boxes to pack")
        note: qsTr("Boxes of a build lie here, each with its list and its ticks.")
        actionText: qsTr("Builds and buying")
        onAction: screen.buildsWanted()
    }

    ChipFlow {
        width: screen.contentWidth
        visible: table.buildIds.length > 1

        Repeater {
            model: table.buildIds

            FilterChip {
                required property string modelData
                required property int index

                picked: modelData === table.build
                text: table.buildNames[index] ?? ""
                onClicked: screen.buildChosen(modelData)
            }
        }
    }

    Words {
        width: screen.contentWidth
        visible: table.count > 0
        role: Theme.Heading
        heading: true
        text: table.readyWords
    }

    Repeater {
        model: table

        LinkRow {
            id: row

            required property string code
            required property string whose
            required property string stateWords
            required property bool special
            required property bool ready
            required property bool gone

            objectName: "box-" + row.code
            width: screen.contentWidth
            sign: row.ready || row.gone ? "sign-count" : "sign-box"
            text: qsTr("%1 for %2").arg(row.code).arg(row.whose)
            shown: screen.opened === row.code
            note: row.stateWords
            endText: row.special && !row.gone ? qsTr("Special") : ""
            onClicked: screen.boxWanted(row.code)
            Component.onCompleted: {
                if (row.shown)
                    screen.held = row
            }
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: table.count > 0
        text: qsTr("On paper")
    }

    Repeater {
        model: table.count > 0 ? ["pack-list", "build-sheet"] : []

        LinkRow {
            id: paper

            required property string modelData
            required property int index

            objectName: "print-" + paper.modelData
            width: screen.contentWidth
            sign: "sign-notebook"
            text: paper.index === 0 ? qsTr("Pack list") : qsTr("Build sheet")
            note: paper.index === 0 ? qsTr("Squares to tick, with what is called out.") : qsTr("What to buy, and what is in each box.")
            onClicked: screen.printWanted(paper.modelData)
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: table.count > 0
        text: qsTr("Boxes that were out")
    }

    LinkRow {
        objectName: "tendWanted"
        width: screen.contentWidth
        sign: "sign-box"
        text: qsTr("Boxes that came back")
        note: qsTr("Clean, replace, use no more.")
        onClicked: screen.tendWanted()
    }

    LinkRow {
        objectName: "recallWanted"
        width: screen.contentWidth
        sign: "sign-search"
        text: qsTr("Recall a lot")
        note: qsTr("Which boxes hold it.")
        onClicked: screen.recallWanted()
    }

    LinkRow {
        objectName: "packersWanted"
        width: screen.contentWidth
        visible: !screen.household.packsOnly
        sign: "sign-crew"
        text: qsTr("Somebody packs with you")
        note: qsTr("On a phone of their own; ticks go both ways.")
        onClicked: screen.packersWanted()
    }

    foot: ActionFoot {
        visible: table.count > 0
        text: qsTr("Pack item by item")
        onClicked: screen.byItemWanted()
    }
}
