pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// Something that a thing has, and its numbers.
Column {
    id: measured

    required property string text
    required property OwnNumbers numbers
    default property alias more: below.data

    visible: measured.numbers.there
    spacing: Theme.gap

    SectionWords {
        width: measured.width
        text: measured.text
    }

    OwnNumberFields {
        width: measured.width
        numbers: measured.numbers
        about: measured.text
    }

    Column {
        id: below

        width: measured.width
    }
}
