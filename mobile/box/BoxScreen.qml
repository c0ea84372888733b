pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// The box as a tray: each item in its own well, how many, and what needs a look.
Sheet {
    id: screen

    required property Household household
    property int opened: -1

    signal countWanted()
    signal floorCheckWanted()
    signal takeOutWanted()

    margin: Theme.gap

    BoxViewModel {
        id: box

        household: screen.household
    }

    ScreenTitle {
        x: Theme.margin - screen.margin
        width: screen.contentWidth - 2 * (Theme.margin - screen.margin)
        text: qsTr("%1's box").arg(screen.household.child)
        under: box.placeWords
        endNote: box.revisionWords
    }

    ProblemNote {
        width: screen.contentWidth
        visible: box.problem.length > 0
        text: box.problem
        actionText: qsTr("Try again")
        onAction: box.load()
    }

    CautionButton {
        width: screen.contentWidth
        visible: box.floorNote
        text: qsTr("A small piece may lie on the floor. Look now.")
        onClicked: screen.floorCheckWanted()
    }

    CautionButton {
        objectName: "mustLeave"
        width: screen.contentWidth
        visible: box.mustLeave
        text: qsTr("Some things must leave the house. See which.")
        onClicked: screen.takeOutWanted()
    }

    EmptyState {
        width: screen.contentWidth
        visible: box.count === 0 && box.problem.length === 0
        drawing: "item-box"
        text: qsTr("Nothing on the lid list")
        note: qsTr("Play needs nothing from the box, then. Count again when something has come.")
    }

    Tray {
        width: screen.contentWidth
        visible: box.count > 0

        WellRow {
            columns: Theme.largeText ? 1 : screen.contentWidth > 560 ? 5 : 3

            Repeater {
                model: box

                TrayWell {
                    id: well

                    required property string itemId
                    required property string name
                    required property string countText
                    required property bool none
                    required property list<string> care
                    required property int index
                    required drawing
                    required tag

                    objectName: "well-" + well.itemId
                    text: well.name
                    count: well.countText
                    look: well.none ? CountChip.None : well.tag.length > 0 ? CountChip.NeedsLook : CountChip.Plain
                    accessibleName: well.name + ", " + well.countText + (well.tag.length > 0 ? ", " + well.tag : "")
                    onClicked: {
                        screen.opened = screen.opened === well.index ? -1 : well.index
                        careCard.head = well.name
                        careCard.lines = well.care
                    }
                }
            }
        }
    }

    Card {
        id: careCard

        property string head: ""
        property list<string> lines

        width: screen.contentWidth
        visible: screen.opened >= 0

        Words {
            width: parent.width
            role: Theme.Label
            text: careCard.head
        }

        Repeater {
            model: careCard.lines

            Words {
                required property string modelData

                width: parent ? parent.width : 0
                role: Theme.Body
                text: modelData
            }
        }
    }

    Pair {
        x: Theme.margin - screen.margin
        width: screen.contentWidth - 2 * (Theme.margin - screen.margin)

        StitchedLink {
            objectName: "place"
            text: box.here ? qsTr("Not here") : qsTr("Box is here")
            onClicked: box.sayPlace(box.here ? "away" : "home")
        }

        StitchedLink {
            objectName: "count"
            text: qsTr("Count it all")
            onClicked: screen.countWanted()
        }
    }
}
