pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// How large it is, what comes off it, its cord, its hollow, its film; and at once what follows.
Column {
    id: part

    required property OwnItemViewModel writing

    spacing: Theme.gap

    OwnSolidList {
        width: part.width
        solids: part.writing.whole
        label: qsTr("One piece, as it is packed")
    }

    OwnFollows {
        width: part.width
        writing: part.writing
    }

    OwnChips {
        width: part.width
        label: qsTr("Thrown, rolled, kicked or dropped")
        choice: part.writing.rolls
    }

    OwnSolidList {
        width: part.width
        solids: part.writing.worn
        label: qsTr("As small as it may get by use")
        addText: qsTr("It wears down")
    }

    OwnSolidList {
        width: part.width
        solids: part.writing.comesOff
        label: qsTr("What comes off, part %1")
        addText: qsTr("Something comes off it, or can be pulled off")
    }

    SectionWords {
        width: part.width
        text: qsTr("It has")
    }

    ChipFlow {
        width: part.width

        FilterChip {
            objectName: "cordThere"
            text: cord.text
            picked: part.writing.cord.there
            onClicked: part.writing.cord.there = !part.writing.cord.there
        }

        FilterChip {
            text: hollow.text
            picked: part.writing.hollow.there
            onClicked: part.writing.hollow.there = !part.writing.hollow.there
        }

        FilterChip {
            text: film.text
            picked: part.writing.film.there
            onClicked: part.writing.film.there = !part.writing.film.there
        }
    }

    OwnMeasured {
        id: cord

        width: part.width
        text: qsTr("A cord, lace or ribbon")
        numbers: part.writing.cord
    }

    OwnMeasured {
        id: hollow

        width: part.width
        text: qsTr("A hollow, such as a cup or a lid")
        numbers: part.writing.hollow

        OwnChips {
            width: parent?.width ?? 0
            label: qsTr("The rim")
            choice: part.writing.hollowIs
        }
    }

    OwnMeasured {
        id: film

        width: part.width
        text: qsTr("Plastic film: a bag or a sheet")
        numbers: part.writing.film

        OwnChips {
            width: parent?.width ?? 0
            label: qsTr("The bag")
            choice: part.writing.filmHas
        }
    }
}
