pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Welcome

/// First run of somebody who packs boxes for children: a name, and the workbench stands.
Sheet {
    id: screen

    required property Household household

    signal back()
    /// A colleague, or the own other phone, has shown a code.
    signal codeWanted()
    signal finished()

    ClinicStart {
        id: start

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Your workbench")
        backName: qsTr("One page back")
        onBack: screen.back()
    }

    news: start.problem

    ProblemNote {
        width: screen.contentWidth
        text: start.problem
    }

    Words {
        width: screen.contentWidth
        text: qsTr("What belongs in a box, what to buy, packing, and which box needs what: all on this phone, without an account and without a signal.")
    }

    PaperField {
        id: name

        objectName: "name"
        width: screen.contentWidth
        label: qsTr("What do families call you?")
        maximumLength: 40
    }

    LinkRow {
        objectName: "haveACode"
        width: screen.contentWidth
        sign: "sign-crew"
        text: qsTr("I have a code")
        note: qsTr("From your own other phone, or a colleague's with whom you pack")
        onClicked: screen.codeWanted()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("Of children you write a first name or a letter: no surname, no birth date, no diagnosis.")
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Not a medical device. Measures and warnings help you to decide, and decide nothing for you: your profession's rules and those of your place come first."))
    }

    foot: ActionFoot {
        text: qsTr("Begin")
        notNowReason: name.text.trim().length === 0 ? qsTr("Your name first; a letter will do.") : ""
        onClicked: {
            if (start.begin(name.text))
                screen.finished()
            else
                screen.toTop()
        }
    }
}
