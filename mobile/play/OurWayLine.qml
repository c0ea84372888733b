pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Play

/// The family's own way of playing it: one line, kept by this home alone.
Column {
    id: line

    required property PlayInHand playInHand
    property bool writing: false

    spacing: Theme.smallGap
    visible: way.mayKeep

    function keep() {
        if (way.keep(field.text))
            line.writing = false
    }

    OurWayViewModel {
        id: way

        playInHand: line.playInHand
    }

    Card {
        width: line.width
        visible: way.words.length > 0 && !line.writing

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            text: qsTr("Our way")
        }

        Words {
            objectName: "ourWay"
            width: parent.width
            role: Theme.Body
            text: way.words
        }

        LinkPair {
            width: parent.width
            text: qsTr("Change it")
            otherText: qsTr("Take it off")
            onClicked: {
                field.text = way.words
                line.writing = true
            }
            onOtherClicked: way.keep("")
        }
    }

    StitchedLink {
        objectName: "addOurWay"
        anchors.left: parent.left
        width: Math.min(implicitWidth, line.width)
        visible: way.words.length === 0 && !line.writing
        text: qsTr("Write down your own way")
        onClicked: {
            field.text = ""
            line.writing = true
        }
    }

    PaperField {
        id: field

        objectName: "ourWayField"
        width: line.width
        visible: line.writing
        label: qsTr("Our way, in one line")
        maximumLength: way.longest
        problem: way.problem
        onAccepted: line.keep()
    }

    Words {
        width: line.width
        visible: line.writing
        role: Theme.Reason
        soft: true
        text: qsTr("It stays on this home's phones. The cautions above hold all the same.")
    }

    LinkPair {
        width: line.width
        visible: line.writing
        text: qsTr("Keep our way")
        otherText: qsTr("Leave it as it was")
        onClicked: line.keep()
        onOtherClicked: line.writing = false
    }
}
