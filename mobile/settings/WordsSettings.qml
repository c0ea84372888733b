pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Settings

/// The language in which whoever writes on this phone reads: each named in itself, so that the way
/// back is found from any of them.
Column {
    id: words

    required property Household household

    spacing: Theme.gap

    LanguageChoices {
        id: languages
    }

    Repeater {
        model: languages

        ChoiceRow {
            id: language

            required property string code
            required property string name
            required property string unchecked
            required property bool naskh

            objectName: "language-" + language.code
            width: words.width
            exclusive: true
            text: language.name
            note: language.unchecked
            arabicScript: language.naskh
            checked: words.household.language === language.code
            onToggled: words.household.language = language.code
        }
    }

    Words {
        objectName: "machineMade"
        width: words.width
        role: Theme.Reason
        soft: true
        visible: languages.isUnchecked(words.household.language)
        text: qsTr("Made by a machine, not yet checked by a person. Words that keep somebody safe show the English too.")
    }
}
