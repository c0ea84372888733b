pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.PutBack

/// What is different: only what went out, five words of equal weight, then how many. Every tap is
/// kept at once.
Sheet {
    id: screen

    required property Household household
    required property PlayInHand playInHand

    signal back()
    signal floorCheckWanted()
    signal driedOutWanted(string itemId)
    signal done(string activityId)

    PutBackViewModel {
        id: putBack

        household: screen.household
        playInHand: screen.playInHand
    }

    header: TitleBar {
        text: qsTr("Something's different")
        backName: qsTr("Back to the tray")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: putBack.problem
    }

    Repeater {
        model: putBack

        DifferentRow {
            id: row

            required property string itemId
            required property int expected
            required property int word
            required property int named
            required property int index
            required name
            required drawing
            required note
            required canStandOpen
            required leftOpen
            required mouthed

            objectName: "exception-" + row.itemId
            width: screen.contentWidth
            words: putBack.words
            currentWord: row.word
            countQuestion: qsTr("How many?")
            countTo: row.word >= 0 && row.expected > 1 ? row.expected : 0
            currentCount: row.named
            onWordChosen: word => {
                if (putBack.canBeRescued(row.index, word))
                    screen.driedOutWanted(row.itemId)
                else
                    putBack.nameWord(row.index, word)
            }
            onOpenSaid: putBack.noteLeftOpen(row.index)
            onMouthSaid: putBack.noteMouthed(row.index)
            onCountChosen: count => {
                putBack.nameCount(row.index, count)
            }
        }
    }

    CautionButton {
        objectName: "lookNow"
        width: screen.contentWidth
        visible: putBack.count > 0 && lookFirst.needed
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Look for the lost piece now"))
        onClicked: screen.floorCheckWanted()
    }

    QtObject {
        id: lookFirst

        property bool needed: false

        function look() {
            lookFirst.needed = putBack.needsFloorCheck()
        }
    }

    Connections {
        target: putBack

        function onChanged() {
            lookFirst.look()
        }
    }

    Component.onCompleted: lookFirst.look()

    foot: ActionFoot {
        text: qsTr("The rest is back")
        notNowReason: screen.playInHand.countFirst
        onClicked: {
            const activityId = screen.playInHand.activityId
            const floorFirst = putBack.needsFloorCheck()
            if (!screen.playInHand.allBack())
                return
            if (floorFirst)
                screen.floorCheckWanted()
            else
                screen.done(activityId)
        }
    }
}
