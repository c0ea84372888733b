pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Notebook

/// Short notes to oneself. They stay with whoever wrote them; each is sent by a choice of its own.
Sheet {
    id: screen

    required property Household household

    signal back()

    OwnNotesViewModel {
        id: notes

        household: screen.household
    }

    function keep() {
        if (notes.keep(field.text))
            field.text = ""
    }

    header: TitleBar {
        text: qsTr("Notes of your own")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("Only you see these, on your own phones.")
    }

    PaperField {
        id: field

        objectName: "noteField"
        width: screen.contentWidth
        label: qsTr("A note for yourself")
        maximumLength: notes.longest
        problem: notes.problem
        onAccepted: screen.keep()
    }

    StitchedLink {
        objectName: "keepNote"
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        visible: field.text.length > 0
        text: qsTr("Keep this note")
        onClicked: screen.keep()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Strong
        text: qsTr("Or with one tap")
    }

    ChipFlow {
        width: screen.contentWidth

        Repeater {
            model: notes.phrases

            PaperButton {
                id: phrase

                required property int index
                required property string modelData

                width: Math.min(implicitWidth, screen.contentWidth)
                text: phrase.modelData
                onClicked: notes.keepPhrase(phrase.index)
            }
        }
    }

    Repeater {
        model: notes

        OwnNoteRow {
            id: row

            required property int index

            width: screen.contentWidth
            onSendChosen: send => notes.chooseToSend(row.index, send)
            onRemoved: notes.remove(row.index)
        }
    }
}
