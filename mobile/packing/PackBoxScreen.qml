pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Packing

/// One box, line by line: what to mind in large words first, then each thing with its count and tick.
/// A special box is looked over on the same page by somebody else.
Sheet {
    id: screen

    required property Household household
    required property string build
    required property string code

    signal done()
    signal boxWanted()

    PackBoxViewModel {
        id: box

        household: screen.household
        build: screen.build
        code: screen.code
    }

    header: TitleBar {
        text: qsTr("%1 for %2").arg(screen.code).arg(box.whose)
        backName: qsTr("Back")
        onBack: screen.done()
    }

    news: box.readyWords

    CautionStrip {
        x: -Theme.margin
        width: screen.width
        visible: box.callOuts.length > 0
        whole: true
        lead: box.callOuts[0] ?? ""
        text: box.callOuts.slice(1).join("\n")
    }

    ProblemNote {
        objectName: "problem"
        width: screen.contentWidth
        text: box.problem
    }

    Words {
        width: screen.contentWidth
        role: Theme.Heading
        heading: true
        text: box.readyWords
    }

    WhoLooks {
        width: screen.contentWidth
        visible: box.special && !box.ready && !box.gone
        name: box.looker
        onNamed: name => box.looker = name
    }

    Repeater {
        model: box.takeOut

        Card {
            id: out

            required property string modelData
            required property int index

            width: screen.contentWidth
            spacing: Theme.chipGap

            Words {
                width: parent.width
                role: Theme.Row
                text: qsTr("%1: not on this box's list any more").arg(out.modelData)
            }

            PaperButton {
                width: parent.width
                text: qsTr("It is out")
                accessibleName: out.modelData + ": " + text
                onClicked: box.isOut(out.index)
            }
        }
    }

    Repeater {
        model: box

        Card {
            id: row

            required property int index
            required property string itemId
            required property string name
            required property string drawing
            required property int pieces
            required property string hand
            required property string stateWords
            required property string call
            required property bool isIn
            required property bool wrong
            required property bool mayLook

            objectName: "line-" + row.itemId
            width: screen.contentWidth
            spacing: Theme.chipGap

            CountedName {
                width: parent.width
                pieces: row.pieces
                drawing: row.drawing
                name: row.name
                note: row.stateWords
                call: row.call
            }

            PaperButton {
                width: parent.width
                visible: row.mayLook && !box.gone
                patch: true
                text: qsTr("Looked over: it is right")
                accessibleName: row.name + ": " + text
                onClicked: box.lookOver(row.index)
            }

            PackTick {
                width: parent.width
                visible: !box.gone
                what: row.name
                hand: row.hand
                isIn: row.isIn
                wrong: row.wrong
                onPacked: hand => box.tick(row.index, hand)
                onUnpacked: box.untick(row.index)
            }
        }
    }

    foot: ActionFoot {
        visible: !box.gone
        text: box.nobodys ? qsTr("Say whose it is") : qsTr("Hand over to %1").arg(box.whose)
        notNowReason: box.nobodys ? ""
                    : !box.ready ? box.readyWords
                    : screen.household.packsOnly ? qsTr("The therapist's phone hands it over.") : ""
        onClicked: {
            if (box.nobodys)
                screen.boxWanted()
            else if (box.handOver())
                screen.done()
        }
    }
}
