pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Packing

/// A lot is typed as it is printed; each box that may hold it is named, and where it is.
Sheet {
    id: screen

    required property Household household
    /// What to look for at once; empty: nothing is typed yet.
    property string lot: ""

    signal done()

    RecallViewModel {
        id: recall

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Recall a lot")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    news: recall.words

    PaperField {
        id: lot

        objectName: "lot"
        width: screen.contentWidth
        label: qsTr("Lot, as it is printed")
        maximumLength: 40
        onAccepted: recall.look(lot.text)
        Component.onCompleted: {
            lot.text = screen.lot
            if (screen.lot.length > 0)
                recall.look(screen.lot)
        }
    }

    ProblemNote {
        width: screen.contentWidth
        text: recall.problem
    }

    Words {
        width: screen.contentWidth
        visible: text.length > 0
        role: Theme.Heading
        heading: true
        text: recall.words
    }

    Repeater {
        model: recall

        Card {
            id: row

            required property string code
            required property string item
            required property string drawing
            required property string place

            objectName: "found-" + row.code
            width: screen.contentWidth

            PicturedName {
                width: parent.width
                drawing: row.drawing
                name: row.code + ": " + row.item
                note: row.place
            }
        }
    }

    foot: ActionFoot {
        text: qsTr("Look for it")
        onClicked: recall.look(lot.text)
    }
}
