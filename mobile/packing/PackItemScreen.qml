pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Packing

/// One thing at a time, over all boxes: how many each gets, and a tick for each.
Sheet {
    id: screen

    required property Household household
    required property string build

    signal done()

    PackItemViewModel {
        id: item

        household: screen.household
        build: screen.build
    }

    header: TitleBar {
        text: item.name
        backName: qsTr("Back")
        onBack: screen.done()
    }

    news: item.problem

    Row {
        spacing: Theme.cardPadding

        PicturedThing {
            drawing: item.drawing
        }

        Words {
            width: screen.contentWidth - Theme.itemLarge - Theme.cardPadding
            role: Theme.Heading
            text: item.countWords
        }
    }

    CautionStrip {
        x: -Theme.margin
        width: screen.width
        visible: item.problem.length > 0
        whole: true
        text: item.problem
    }

    PaperButton {
        objectName: "allPlain"
        width: screen.contentWidth
        visible: item.plain > 1
        text: qsTr("It is in all %1 boxes that are not special").arg(Numerals.of(item.plain))
        onClicked: item.tickPlain()
    }

    Repeater {
        model: item

        Card {
            id: row

            required property int index
            required property string code
            required property string whose
            required property int pieces
            required property string call
            required property string stateWords
            required property bool isIn
            required property bool wrong
            required property string hand

            objectName: "box-" + row.code
            width: screen.contentWidth
            spacing: Theme.chipGap

            CountedName {
                width: parent.width
                pieces: row.pieces
                name: qsTr("%1 for %2").arg(row.code).arg(row.whose)
                note: row.stateWords
                call: row.call
            }

            PackTick {
                width: parent.width
                what: row.code + ", " + item.name
                hand: row.hand
                isIn: row.isIn
                wrong: row.wrong
                onPacked: hand => item.tick(row.index, hand)
                onUnpacked: item.untick(row.index)
            }
        }
    }

    foot: ActionFoot {
        text: item.at + 1 < item.items ? qsTr("Next thing") : qsTr("Done")
        otherText: item.at > 0 ? qsTr("The one before") : ""
        onClicked: {
            if (item.at + 1 < item.items)
                item.at += 1
            else
                screen.done()
        }
        onOtherClicked: item.at -= 1
    }
}
