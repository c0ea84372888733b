pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Welcome

/// Whose box it is, and how old.
Column {
    id: page

    required property WelcomeViewModel answers
    /// Whose box it is, is known already.
    property bool named: false
    readonly property int oldest: 11

    spacing: Theme.sectionGap

    WelcomeLine {
        width: page.width
        visible: !page.named
    }

    PaperField {
        objectName: "childName"
        width: page.width
        visible: !page.named
        label: qsTr("Whose box is it? A first name or a letter")
        text: page.answers.childName
        maximumLength: 20
        onEdited: page.answers.childName = text
    }

    AgeKeys {
        width: page.width
        text: qsTr("How many years old?")
        years: page.answers.years
        oldest: page.oldest
        onSaid: years => page.answers.years = years
    }

    MonthChips {
        width: page.width
        visible: page.answers.years >= 0
        month: page.answers.month
        onSaid: month => page.answers.month = month
    }

    Words {
        width: page.width
        role: Theme.Reason
        soft: true
        text: page.named ? qsTr("Without an age only a few things are offered, the safest ones. No surname, no birth date. Whoever is in the crew of this box reads it.")
            : page.answers.years < 0 ? qsTr("Without an age only a few things are offered, the safest ones. No surname, no birth date. Everything stays on this phone.")
                                     : qsTr("No surname, no birth date. Everything stays on this phone.")
    }
}
