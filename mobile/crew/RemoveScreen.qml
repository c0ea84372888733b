pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Takes a phone out of the crew, or leaves it, after the words that say what stays.
Sheet {
    id: screen

    required property CrewLife crewLife
    required property string member
    required property string person
    required property bool own

    signal back()

    function takeOut() {
        if (screen.own)
            screen.crewLife.leave()
        else
            screen.crewLife.remove(screen.member)
        screen.back()
    }

    header: TitleBar {
        text: screen.own ? qsTr("Leave the crew") : qsTr("Take out: %1").arg(screen.person)
        backName: qsTr("Back to the crew")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        text: screen.own ? qsTr("What you noted stays with the crew, under your name.") : qsTr("What %1 noted stays, under that name.").arg(screen.person)
    }

    Words {
        width: screen.contentWidth
        text: screen.own ? qsTr("What is on this phone stays on it. From now on nothing new comes or goes.")
                         : qsTr("From now on nothing new reaches that phone. What is on it already cannot be fetched back.")
    }

    Words {
        width: screen.contentWidth
        text: qsTr("To come back takes a new code.")
    }

    PaperButton {
        objectName: "takeOut"
        width: screen.contentWidth
        text: screen.own ? qsTr("Leave now") : qsTr("Take out now")
        onClicked: screen.takeOut()
    }

    foot: ActionFoot {
        text: screen.own ? qsTr("Stay in") : qsTr("Keep in the crew")
        onClicked: screen.back()
    }
}
