pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// Somebody has used the code: whether it is the one who stands here, an adult says.
Column {
    id: knock

    required property LettingIn letting

    spacing: Theme.sectionGap

    Words {
        objectName: "whoKnocks"
        width: knock.width
        role: Theme.Heading
        heading: true
        text: qsTr("Somebody is here: %1").arg(knock.letting.newcomer)
    }

    SameWords {
        width: knock.width
        question: qsTr("Do both phones show these three words?")
        words: knock.letting.sameWords
    }

    Pair {
        width: knock.width

        PaperButton {
            objectName: "letThemIn"
            text: qsTr("Yes, let in")
            accessibleName: qsTr("Yes, let %1 in").arg(knock.letting.newcomer)
            notNowReason: knock.letting.busy ? qsTr("One moment.") : ""
            onClicked: knock.letting.letIn()
        }

        PaperButton {
            objectName: "notThisPhone"
            text: qsTr("Not this phone")
            notNowReason: knock.letting.busy ? qsTr("One moment.") : ""
            onClicked: knock.letting.refuse()
        }
    }
}
