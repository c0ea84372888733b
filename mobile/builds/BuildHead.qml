pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// What is said of a build: its name, the day on which it is packed, spares, currency.
Card {
    id: head

    property alias name: nameField.text
    property alias currency: currencyField.text
    property string dayWords: ""
    property int spares: 10
    property string keepText: ""

    signal dayMoved(int days)
    signal sparesWanted(int percent)
    signal kept()

    spacing: Theme.gap

    PaperField {
        id: nameField

        objectName: "name"
        width: parent.width
        label: qsTr("Name of the build")
        placeholder: qsTr("Spring boxes")
        maximumLength: 80
    }

    Words {
        width: parent.width
        role: Theme.Row
        text: qsTr("Packed on %1").arg(head.dayWords)
    }

    Pair {
        width: parent.width

        PaperButton {
            text: qsTr("A day earlier")
            onClicked: head.dayMoved(-1)
        }

        PaperButton {
            text: qsTr("A day later")
            onClicked: head.dayMoved(1)
        }
    }

    Stepper {
        width: parent.width
        text: qsTr("Spares, percent")
        note: qsTr("Of what play uses up, rounded up to a whole piece.")
        value: head.spares
        valueText: Numerals.of(value)
        to: 100
        lessName: qsTr("One percent less")
        moreName: qsTr("One percent more")
        onChanged: value => head.sparesWanted(value)
    }

    PaperField {
        id: currencyField

        objectName: "currency"
        width: parent.width
        label: qsTr("Currency, three letters")
        maximumLength: 3
        text: "GBP"
    }

    PaperButton {
        objectName: "keepHead"
        width: parent.width
        patch: true
        text: head.keepText
        onClicked: head.kept()
    }
}
