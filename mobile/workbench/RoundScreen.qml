pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Workbench

/// The restock round on one page: by item what each box waits for, then by box how it gets there.
Sheet {
    id: screen

    required property Household household

    signal back()

    RoundViewModel {
        id: round

        household: screen.household
    }

    ParcelViewModel {
        id: parcels

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Restock round")
        backName: qsTr("Back to the workbench")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: round.problem.length > 0 ? round.problem : parcels.problem
    }

    EmptyState {
        width: screen.contentWidth
        visible: round.count === 0
        drawing: "item-box"
        text: qsTr("Nothing to pack")
        note: qsTr("What families ask for stands here, item by item.")
    }

    Repeater {
        model: round

        Column {
            id: line

            required property int index
            required property string itemId
            required property string heading
            required property string total
            required property string drawing
            required property string child
            required property string note
            required property bool packed

            width: screen.contentWidth
            spacing: Theme.chipGap

            PicturedWords {
                visible: line.heading.length > 0
                heading: true
                drawing: line.drawing
                text: line.heading
                note: line.total
            }

            ChoiceRow {
                objectName: "pack-" + line.itemId + "-" + line.child
                width: line.width
                text: line.packed ? qsTr("%1: packed").arg(line.child) : line.child
                note: line.note
                checked: line.packed
                onToggled: {
                    if (!line.packed)
                        round.pack(line.index)
                    checked = Qt.binding(() => line.packed)
                }
            }
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: parcels.count > 0
        text: qsTr("How it gets there")
    }

    Repeater {
        model: parcels

        Card {
            id: parcel

            required property int index
            required property string child
            required property string note
            required property bool byPost
            required property int packed

            width: screen.contentWidth
            spacing: Theme.chipGap

            Words {
                width: parent.width
                role: Theme.Label
                text: parcel.child
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: parcel.note
            }

            ChipFlow {
                FilterChip {
                    objectName: "post-" + parcel.child
                    picked: parcel.byPost
                    text: qsTr("By post")
                    accessibleName: parcel.child + ": " + text
                    onClicked: parcels.goByPost(parcel.index, true)
                }

                FilterChip {
                    objectName: "visit-" + parcel.child
                    picked: !parcel.byPost
                    text: qsTr("On a visit")
                    accessibleName: parcel.child + ": " + text
                    onClicked: parcels.goByPost(parcel.index, false)
                }
            }

            PaperButton {
                objectName: "send-" + parcel.child
                width: parent.width
                visible: parcel.packed > 0
                text: parcel.byPost ? qsTr("It is posted") : qsTr("I have it with me")
                accessibleName: parcel.child + ": " + text
                onClicked: parcels.send(parcel.index)
            }
        }
    }
}
