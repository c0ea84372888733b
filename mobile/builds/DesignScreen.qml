pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Builds

/// One kind of box: what belongs in it, how many of each, and how much play each brings.
Sheet {
    id: screen

    required property Household household
    required property string design

    signal done()

    DesignViewModel {
        id: box

        household: screen.household
        design: screen.design
    }

    header: TitleBar {
        text: box.name.length > 0 ? box.name : qsTr("New kind of box")
        backName: qsTr("Back, nothing is changed")
        onBack: screen.done()
    }

    unsaved: box.changed || name.text !== box.name
    news: box.playWords

    ProblemNote {
        objectName: "problem"
        width: screen.contentWidth
        text: box.problem
    }

    PaperField {
        id: name

        objectName: "name"
        width: screen.contentWidth
        label: qsTr("What this kind of box is called")
        placeholder: qsTr("Standard box")
        maximumLength: 80
        Component.onCompleted: name.text = box.name
    }

    Words {
        width: screen.contentWidth
        visible: text.length > 0
        role: Theme.Reason
        text: box.playWords
    }

    PaperButton {
        objectName: "putInOurs"
        width: screen.contentWidth
        visible: screen.design.length === 0 && box.items.length === 0
        text: qsTr("Begin with our standard box")
        onClicked: box.putInOurs()
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
            required property string playWords
            required property bool idle

            objectName: "part-" + row.itemId
            width: screen.contentWidth
            spacing: Theme.chipGap

            Stepper {
                width: parent.width
                text: row.name
                drawing: row.drawing
                value: row.pieces
                valueText: Numerals.of(value)
                from: 1
                to: 1000
                lessName: qsTr("One less: %1").arg(row.name)
                moreName: qsTr("One more: %1").arg(row.name)
                onChanged: value => box.setPieces(row.index, value)
            }

            Words {
                width: parent.width
                visible: text.length > 0
                role: Theme.Reason
                strong: row.idle
                soft: !row.idle
                text: row.playWords
            }

            StitchedLink {
                anchors.left: parent.left
                text: qsTr("Take out")
                accessibleName: row.name + ": " + text
                onClicked: box.takeOut(row.index)
            }
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
        objectName: "removeDesign"
        anchors.left: parent.left
        visible: screen.design.length > 0
        text: qsTr("Use this kind of box no more")
        onClicked: {
            if (box.remove())
                screen.done()
        }
    }

    foot: ActionFoot {
        text: qsTr("Keep this kind of box")
        onClicked: {
            if (box.keep(name.text))
                screen.done()
            else
                screen.toTop()
        }
    }
}
