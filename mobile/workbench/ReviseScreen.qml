pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Workbench

/// The next revision of a lid list: what stays, how many, what is left out and put in; what that
/// does in this home, said before it is sent; and why, in words that the family reads.
Sheet {
    id: screen

    required property Household household
    property bool adding: false

    signal back()
    signal sent()

    unsaved: list.changed

    ReviseViewModel {
        id: list

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Change %1's box").arg(screen.household.childTitle)
        backName: qsTr("Back, nothing is changed")
        onBack: screen.back()
    }

    Repeater {
        model: list

        ReviseRow {
            id: row

            required property string itemId
            required property string swapId
            required name
            required drawing
            required note
            required pieces
            required out
            required swapName

            objectName: "revise-" + row.itemId
            width: screen.contentWidth
            onPiecesWanted: pieces => list.setPieces(row.itemId, pieces)
            onOutWanted: out => list.leaveOut(row.itemId, out)
            onSwapWanted: list.putInFor(row.swapId, row.itemId)
        }
    }

    StitchedLink {
        objectName: "putIn"
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        text: screen.adding ? qsTr("Close the catalogue") : qsTr("Put something in")
        onClicked: {
            screen.adding = !screen.adding
            screen.held = screen.adding ? additions : null // it opens below
        }
    }

    AdditionList {
        id: additions

        width: screen.contentWidth
        household: screen.household
        list: list
        open: screen.adding
        onWanted: itemId => {
            screen.adding = false
            list.putIn(itemId)
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: list.effects.length > 0
        text: qsTr("What this does")
    }

    Card {
        objectName: "effects"
        width: screen.contentWidth
        visible: list.effects.length > 0
        spacing: Theme.gap

        Repeater {
            model: list.effects

            Words {
                required property string modelData

                width: parent?.width ?? 0
                role: Theme.Body
                text: modelData
            }
        }
    }

    PaperArea {
        id: why

        objectName: "why"
        width: screen.contentWidth
        label: qsTr("Why, in words the family reads")
        problem: list.problem
    }

    foot: ActionFoot {
        text: qsTr("Send as revision %1").arg(Numerals.of(list.nextNumber))
        notNowReason: list.changed ? "" : qsTr("The list is as it was")
        onClicked: {
            if (list.send(why.text)) {
                screen.sent()
                return
            }
            screen.held = why // what is wrong stands beside it, at the end of a long page
            screen.showItem(why)
        }
    }
}
