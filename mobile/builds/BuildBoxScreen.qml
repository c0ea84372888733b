pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Builds

/// One box of a build: whose, for which hand, what goes in, and why it differs.
Sheet {
    id: screen

    required property Household household
    required property string build
    required property string code

    signal done()

    BuildBoxViewModel {
        id: box

        household: screen.household
        build: screen.build
        code: screen.code
    }

    header: TitleBar {
        text: qsTr("Box %1").arg(screen.code)
        backName: qsTr("Back, nothing is changed")
        onBack: screen.done()
    }

    unsaved: box.changed || whose.text !== box.whose
    news: box.problem

    CautionStrip {
        x: -Theme.margin
        width: screen.width
        visible: box.avoidWords.length > 0
        whole: true
        text: box.avoidWords
    }

    ProblemNote {
        objectName: "problem"
        width: screen.contentWidth
        text: box.problem
    }

    PaperField {
        id: whose

        objectName: "whose"
        width: screen.contentWidth
        label: qsTr("Whose box, by alias; empty: nobody's yet")
        maximumLength: 40
        Component.onCompleted: whose.text = box.whose
    }

    Words {
        width: screen.contentWidth
        visible: box.children.length > 0
        role: Theme.Reason
        soft: true
        text: qsTr("Fill it in for a child: what the home must avoid is swapped or left out.")
    }

    ChipFlow {
        width: screen.contentWidth
        visible: box.children.length > 0

        Repeater {
            model: box.children

            FilterChip {
                required property string modelData

                picked: modelData === whose.text
                text: modelData
                accessibleName: qsTr("Fill it in for %1").arg(modelData)
                onClicked: {
                    whose.text = modelData
                    box.fillFor(modelData)
                }
            }
        }
    }

    Words {
        width: screen.contentWidth
        role: Theme.Row
        text: qsTr("Which hand cuts?")
    }

    ChipFlow {
        width: screen.contentWidth

        FilterChip {
            picked: box.hand === ""
            text: qsTr("Not said")
            onClicked: box.hand = ""
        }

        FilterChip {
            picked: box.hand === "left"
            text: qsTr("Left hand")
            onClicked: box.hand = "left"
        }

        FilterChip {
            picked: box.hand === "right"
            text: qsTr("Right hand")
            onClicked: box.hand = "right"
        }
    }

    Repeater {
        model: box

        BoxPartCard {
            id: row

            required property int index
            required property string itemId
            required name
            required drawing
            required pieces
            required stateWords
            required differs
            required reason
            required reasonWords
            required swapName
            required isSwapped

            objectName: "part-" + row.itemId
            width: screen.contentWidth
            reasonIds: box.reasonIds
            reasonNames: box.reasonNames
            onPiecesWanted: pieces => box.setPieces(row.index, pieces)
            onOutWanted: box.leaveOut(row.index)
            onBackWanted: box.putBack(row.index)
            onSwapWanted: box.swap(row.index)
            onReasonChosen: reason => box.setReason(row.index, reason)
            onWordsWritten: words => box.setWords(row.index, words)
        }
    }

    ThingsToPutIn {
        id: things

        width: screen.contentWidth
        household: screen.household
        inIt: box.items
        onWanted: itemId => {
            things.open = false
            box.putIn(itemId)
        }
    }

    StitchedLink {
        objectName: "dropBox"
        anchors.left: parent.left
        text: qsTr("Take this box out of the build")
        onClicked: {
            if (box.drop())
                screen.done()
        }
    }

    foot: ActionFoot {
        text: qsTr("Keep this box")
        onClicked: {
            if (box.keep(whose.text))
                screen.done()
            else
                screen.toTop()
        }
    }
}
