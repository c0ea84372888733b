pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// The pieces of a perishable: when each was opened, that it was left open, and how long the family
/// keeps it.
Column {
    id: list

    required property Household household
    required property string itemId
    /// How long it is kept is asked.
    property bool keepShown: true

    spacing: Theme.gap
    visible: pieces.count > 0

    PieceViewModel {
        id: pieces

        household: list.household
        itemId: list.itemId
    }

    ProblemNote {
        width: list.width
        text: pieces.problem
    }

    Repeater {
        model: pieces

        Card {
            id: card

            required property int index
            required property string words
            required property bool opened
            required property int choice

            width: list.width
            spacing: Theme.gap

            Words {
                width: parent.width
                text: card.words
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: qsTr("When was it opened?")
            }

            ChipFlow {
                Repeater {
                    model: pieces.openedChoices

                    FilterChip {
                        id: chip

                        required property string modelData
                        required property int index

                        accessibleName: qsTr("Opened: %1").arg(chip.modelData)
                        text: chip.modelData
                        picked: card.choice === chip.index
                        onClicked: pieces.chooseOpened(card.index, chip.index)
                    }
                }
            }

            StitchedLink {
                objectName: "leftOpen"
                anchors.left: parent.left
                width: Math.min(implicitWidth, parent.width)
                visible: card.opened
                text: qsTr("It was left open")
                onClicked: pieces.leftOpen(card.index)
            }
        }
    }

    Card {
        width: list.width
        visible: list.keepShown
        spacing: Theme.gap

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            text: qsTr("How long do you keep it once opened?")
        }

        ChipFlow {
            Repeater {
                model: pieces.keepChoices

                FilterChip {
                    id: keep

                    required property string modelData
                    required property int index

                    accessibleName: qsTr("Keeps: %1").arg(keep.modelData)
                    text: keep.modelData
                    picked: pieces.keepChoice === keep.index
                    onClicked: pieces.chooseKeep(keep.index)
                }
            }
        }
    }
}
