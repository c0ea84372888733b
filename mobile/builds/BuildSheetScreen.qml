pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Builds

/// The build sheet: what is to be put right, what you spend today and for what; and, as another
/// thing, what lies in each box.
Sheet {
    id: screen

    required property Household household
    required property string build
    /// Whether all of it is bought: a slip of the thumb would fill the shelf.
    property bool asked: false

    signal done()
    signal shelfWanted()
    signal supplyWanted(string itemId)
    signal buildWanted()
    signal boxWanted(string code)

    function leadTo(place: string) {
        if (place === "shelf")
            screen.shelfWanted()
        else if (place === "build")
            screen.buildWanted()
        else if (place.startsWith("supply "))
            screen.supplyWanted(place.replace("supply ", ""))
        else
            screen.boxWanted(place.replace("box ", ""))
    }

    SheetViewModel {
        id: sheet

        household: screen.household
        build: screen.build
    }

    header: TitleBar {
        text: qsTr("Build sheet: %1").arg(sheet.name)
        backName: qsTr("Back")
        onBack: screen.done()
    }

    news: sheet.problem

    ProblemNote {
        objectName: "problem"
        width: screen.contentWidth
        text: sheet.problem
    }

    SectionWords {
        width: screen.contentWidth
        visible: sheet.problems.length > 0
        text: qsTr("To be put right first")
    }

    Repeater {
        model: sheet.problems

        LinkRow {
            required property string modelData
            required property int index

            objectName: "fault-" + index
            width: screen.contentWidth
            sign: "sign-warning"
            text: modelData
            onClicked: screen.leadTo(sheet.placeOf(index))
        }
    }

    Card {
        objectName: "spend"
        width: screen.contentWidth
        visible: sheet.problems.length === 0
        spacing: Theme.smallGap

        Repeater {
            model: sheet.bought

            Words {
                required property string modelData

                width: parent?.width ?? 0
                strong: true
                text: modelData
            }
        }

        Words {
            width: parent.width
            role: Theme.Row
            heading: true
            text: qsTr("What you spend today")
        }

        Words {
            width: parent.width
            role: Theme.BigYes
            text: sheet.spend
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            text: sheet.open ? qsTr("At the till: whole packs, spares among them. What is left over lies on the shelf afterwards, without a lot until you write what stands on the new packs.")
                             : qsTr("Everything for these boxes is there. A box that is added is bought for by itself.")
        }
    }

    Card {
        objectName: "askedWhether"
        width: screen.contentWidth
        visible: screen.asked && sheet.open
        spacing: Theme.gap

        Words {
            width: parent.width
            heading: true
            role: Theme.Row
            text: sheet.count > 0 ? qsTr("Is all of it bought, at these prices?") : qsTr("Is all of it set aside?")
        }

        Words {
            width: parent.width
            text: qsTr("It is set aside for these boxes, and what is left over is on the shelf. This cannot be taken back; the shelf can be put right by hand.")
        }

        PaperButton {
            width: parent.width
            patch: true
            text: qsTr("Yes, all of it")
            onClicked: {
                screen.asked = false
                sheet.book()
                screen.toTop()
            }
        }

        StitchedLink {
            anchors.left: parent.left
            text: qsTr("Not yet")
            onClicked: screen.asked = false
        }
    }

    Repeater {
        model: sheet

        Card {
            id: row

            required property string itemId
            required property string name
            required property string drawing
            required property string needWords
            required property string buyWords
            required property string leftWords

            objectName: "line-" + row.itemId
            width: screen.contentWidth
            spacing: Theme.smallGap

            PicturedWords {
                drawing: row.drawing
                text: row.name
                note: row.needWords
            }

            Words {
                width: parent.width
                strong: true
                text: row.buyWords
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: row.leftWords
            }
        }
    }

    Rule {
        width: screen.contentWidth
        visible: sheet.boxNames.length > 0
    }

    Words {
        width: screen.contentWidth
        visible: sheet.boxNames.length > 0
        role: Theme.Heading
        heading: true
        text: qsTr("What is in each box")
    }

    Words {
        width: screen.contentWidth
        visible: sheet.boxNames.length > 0
        role: Theme.Reason
        soft: true
        text: qsTr("What the pieces in one box are worth: each its share of its pack. This is not what you pay today.")
    }

    Repeater {
        model: sheet.boxNames

        Card {
            id: group

            required property string modelData
            required property int index

            objectName: "group-" + group.index
            width: screen.contentWidth
            spacing: Theme.smallGap

            Words {
                width: parent.width
                role: Theme.Row
                text: qsTr("In each of them: %1").arg(sheet.boxWorths[group.index] ?? "")
            }

            Words {
                width: parent.width
                text: group.modelData
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: sheet.boxCodes[group.index] ?? ""
            }
        }
    }

    foot: ActionFoot {
        visible: sheet.open && !screen.asked
        text: sheet.count > 0 ? qsTr("Bought") : qsTr("Set aside")
        onClicked: {
            screen.asked = true
            screen.toTop()
        }
    }
}
