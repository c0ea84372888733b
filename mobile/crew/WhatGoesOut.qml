pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What is asked of an adult before anything leaves the phone (job.md D3, D4): a change of these
/// words is a change of core/sync/consent.h's consentWording.
Card {
    id: card

    required property string question
    required property string yes
    property string notNowReason: ""

    signal agreed()
    signal notNow()

    spacing: Theme.gap

    Words {
        width: parent.width
        role: Theme.Label
        text: qsTr("What leaves this phone")
    }

    Words {
        width: parent.width
        text: qsTr("What is noted about the box, the home and the play, under the names used here. No surname, no photo, no place on a map.")
    }

    Words {
        width: parent.width
        text: qsTr("It is sealed on this phone. Only phones that a parent or the therapist has let in can open it, and each only its part. Notes of your own stay here.")
    }

    Words {
        width: parent.width
        text: qsTr("You can stop at any time with one tap. What others have by then stays with them.")
    }

    Words {
        width: parent.width
        role: Theme.Label
        text: card.question
    }

    Pair {
        width: parent.width

        PaperButton {
            objectName: "agree"
            text: card.yes
            accessibleName: card.yes + ". " + card.question
            notNowReason: card.notNowReason
            onClicked: card.agreed()
        }

        PaperButton {
            objectName: "notNow"
            text: qsTr("Not now")
            accessibleName: qsTr("Not now") + ". " + card.question
            onClicked: card.notNow()
        }
    }
}
