pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Welcome

/// Who holds the phone, and which other children live here: small parts reach them too.
Column {
    id: page

    required property WelcomeViewModel answers
    /// Who holds the phone is known already.
    property bool named: false

    /// A child who was typed but not added counts all the same.
    function takeIn() {
        form.takeIn()
    }

    spacing: Theme.sectionGap

    PaperField {
        objectName: "adultName"
        width: page.width
        visible: !page.named
        label: qsTr("What are you called here?")
        text: page.answers.adultName
        maximumLength: 20
        onEdited: page.answers.adultName = text
    }

    Words {
        width: page.width
        text: qsTr("Other children decide what may come out of the box, present or not. Are there any?")
    }

    Repeater {
        model: page.answers.otherChildren

        OtherChildRow {
            required property string modelData
            required property int index

            width: page.width
            text: modelData
            onTakenOff: page.answers.removeChild(index)
        }
    }

    OtherChildForm {
        id: form

        width: page.width
        answers: page.answers
    }
}
