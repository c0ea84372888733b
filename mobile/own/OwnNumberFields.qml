pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// Numbers that belong together, a field each; what is none is said beside it.
Column {
    id: fields

    required property OwnNumbers numbers
    property string about: "" ///< What they measure, for an ear.

    spacing: Theme.gap

    Repeater {
        model: fields.numbers

        PaperField {
            id: field

            required property int index
            required property string words
            required label
            required problem

            width: fields.width
            accessibleName: fields.about.length > 0 ? fields.about + ": " + field.label : field.label
            maximumLength: 8
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            onEdited: fields.numbers.write(field.index, field.text)
            Component.onCompleted: field.text = field.words
        }
    }
}
