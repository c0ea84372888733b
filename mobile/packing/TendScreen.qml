pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Packing

/// A box that came back: what is cleaned, how, and what is replaced before another child has it.
Sheet {
    id: screen

    required property Household household

    signal done()

    TendViewModel {
        id: box

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Boxes that came back")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    news: box.firstWords

    EmptyState {
        width: screen.contentWidth
        visible: box.codes.length === 0
        drawing: "item-box"
        text: qsTr("No box has been handed over")
        note: qsTr("Once one has, it stands here until it is used no more.")
    }

    ChipFlow {
        width: screen.contentWidth

        Repeater {
            model: box.codes

            FilterChip {
                required property string modelData

                picked: modelData === box.code
                text: modelData
                onClicked: box.code = modelData
            }
        }
    }

    Words {
        width: screen.contentWidth
        visible: text.length > 0
        role: Theme.Heading
        heading: true
        text: box.standingWords
    }

    ProblemNote {
        width: screen.contentWidth
        text: box.problem
    }

    PaperButton {
        objectName: "takeBack"
        width: screen.contentWidth
        visible: box.withChild
        patch: true
        text: qsTr("It came back")
        onClicked: box.takeBack()
    }

    CautionStrip {
        x: -Theme.margin
        width: screen.width
        visible: box.firstWords.length > 0
        whole: true
        text: box.firstWords
    }

    Words {
        width: screen.contentWidth
        visible: box.returned && box.firstWords.length === 0
        text: qsTr("All clean. It can be packed for another child.")
    }

    Repeater {
        model: box

        Card {
            id: row

            required property int index
            required property string itemId
            required property string name
            required property string drawing
            required property bool replace
            required property bool done
            required property string stateWords

            objectName: "tend-" + row.itemId
            width: screen.contentWidth
            spacing: Theme.chipGap

            PicturedName {
                width: parent.width
                drawing: row.drawing
                name: row.name
                note: row.stateWords
            }

            ChipFlow {
                width: parent.width
                visible: !row.done && !row.replace

                FilterChip {
                    acts: true
                    text: qsTr("Soap and water")
                    accessibleName: row.name + ": " + text
                    onClicked: box.clean(row.index, "soap-and-water")
                }

                FilterChip {
                    acts: true
                    text: qsTr("Wiped")
                    accessibleName: row.name + ": " + text
                    onClicked: box.clean(row.index, "wiped")
                }

                FilterChip {
                    acts: true
                    text: qsTr("Washing machine")
                    accessibleName: row.name + ": " + text
                    onClicked: box.clean(row.index, "machine")
                }
            }

            PaperField {
                id: lot

                width: parent.width
                visible: !row.done && row.replace
                label: qsTr("Lot of the new one, if it has one")
                maximumLength: 40
            }

            PaperButton {
                width: parent.width
                visible: !row.done && row.replace
                text: qsTr("Replaced by a new one")
                accessibleName: row.name + ": " + text
                onClicked: box.replace(row.index, lot.text)
            }

            StitchedLink {
                anchors.left: parent.left
                visible: row.done
                text: qsTr("Not yet, after all")
                accessibleName: row.name + ": " + text
                onClicked: box.untend(row.index)
            }
        }
    }

    StitchedLink {
        objectName: "retire"
        anchors.left: parent.left
        visible: box.returned
        text: qsTr("Use this box no more")
        onClicked: box.retire()
    }
}
