pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Letters to press, for whoever writes with a switch: what is pressed stands in the field at once.
Sheet {
    id: board

    required property FieldFrame field
    readonly property string written: board.field ? board.field.written : ""
    //: All letters of the language, in their order, each once.
    readonly property string letters: qsTr("abcdefghijklmnopqrstuvwxyz")
    readonly property list<string> keys: Array.from(board.letters + "0123456789+")

    signal done()

    function write(letter: string) {
        const begins = board.written.length === 0 || board.written.endsWith(" ")
        board.field.letterWritten(begins ? letter.toLocaleUpperCase() : letter)
    }

    spacing: Theme.sectionGap
    Keys.onEscapePressed: board.done()

    header: TitleBar {
        text: board.field ? board.field.label : ""
    }

    Card {
        width: board.contentWidth

        Words {
            objectName: "written"
            width: parent.width
            role: Theme.Heading
            text: board.written.length > 0 ? board.written : "…"
        }
    }

    ChipFlow {
        width: board.contentWidth

        Repeater {
            model: board.keys

            NumberKey {
                id: key

                required property string modelData

                objectName: "letter-" + key.modelData
                text: key.modelData
                onClicked: board.write(key.modelData)
            }
        }
    }

    Pair {
        width: board.contentWidth

        PaperButton {
            objectName: "space"
            text: qsTr("A gap")
            onClicked: board.field.letterWritten(" ")
        }

        PaperButton {
            objectName: "takeBack"
            text: qsTr("One letter back")
            notNowReason: board.written.length > 0 ? "" : qsTr("Nothing written")
            onClicked: board.field.letterTakenBack()
        }
    }

    foot: ActionFoot {
        objectName: "lettersDone"
        text: qsTr("Done")
        onClicked: board.done()
    }
}
