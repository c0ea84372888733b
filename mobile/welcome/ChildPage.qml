pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Welcome

/// Whose box it is, how old, and who is writing.
Column {
    id: page

    required property WelcomeViewModel answers
    readonly property list<string> months: [qsTr("January"), qsTr("February"), qsTr("March"), qsTr("April"), qsTr("May"),
        qsTr("June"), qsTr("July"), qsTr("August"), qsTr("September"), qsTr("October"), qsTr("November"), qsTr("December")]

    spacing: Theme.gap

    PaperField {
        objectName: "childName"
        width: page.width
        label: qsTr("Whose box is it? A first name or a letter")
        text: page.answers.childName
        maximumLength: 20
        onEdited: page.answers.childName = text
    }

    Words {
        width: page.width
        role: Theme.Reason
        soft: true
        text: qsTr("No surname, no birthday. Everything stays on this phone.")
    }

    Stepper {
        objectName: "birthYear"
        width: page.width
        text: qsTr("Born in the year")
        value: page.answers.birthYear > 0 ? page.answers.birthYear : page.answers.thisYear - 5
        valueText: page.answers.birthYear > 0 ? page.answers.birthYear.toString() : qsTr("not said")
        from: page.answers.thisYear - 12
        to: page.answers.thisYear
        lessName: qsTr("A year earlier")
        moreName: qsTr("A year later")
        onChanged: value => page.answers.birthYear = value
    }

    Stepper {
        objectName: "birthMonth"
        width: page.width
        text: qsTr("Month")
        value: Math.max(1, page.answers.birthMonth)
        valueText: page.answers.birthMonth > 0 ? page.months[page.answers.birthMonth - 1] : qsTr("not said")
        from: 1
        to: 12
        lessName: qsTr("A month earlier")
        moreName: qsTr("A month later")
        onChanged: value => page.answers.birthMonth = value
    }

    Words {
        width: page.width
        role: Theme.Reason
        soft: true
        text: qsTr("Without an age only a few things are offered, the safest ones.")
    }

    PaperField {
        objectName: "adultName"
        width: page.width
        label: qsTr("And what are you called here?")
        text: page.answers.adultName
        maximumLength: 20
        onEdited: page.answers.adultName = text
    }
}
