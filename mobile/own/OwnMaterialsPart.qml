pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// What it is made of and what it does; what is reckoned from its sizes stays on.
Column {
    id: part

    required property OwnItemViewModel writing

    spacing: Theme.gap

    OwnChips {
        width: part.width
        label: qsTr("Does it hold anything that goes into no box?")
        choice: part.writing.holds
    }

    OwnChips {
        width: part.width
        label: qsTr("Allergens in it")
        choice: part.writing.allergens
    }

    OwnChips {
        width: part.width
        label: qsTr("In play it is")
        choice: part.writing.traits
    }

    OwnChips {
        width: part.width
        label: qsTr("What there is to mind; what follows from its sizes stays")
        choice: part.writing.cautions
    }
}
