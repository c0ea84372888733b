pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// "I need a grown-up": answered by people, not by activities.
Sheet {
    id: screen

    required property string childName

    signal done()

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("%1 needs you").arg(screen.childName)
        under: qsTr("Play can wait.")
    }

    Drawing {
        width: Theme.itemLarge
        height: Theme.itemLarge
        name: "hand"
        alt: qsTr("An open hand")
    }

    Words {
        width: screen.contentWidth
        role: Theme.Step
        text: qsTr("Hurt, toilet, thirsty, hungry, scared, or no?")
    }

    Words {
        width: screen.contentWidth
        role: Theme.Body
        soft: true
        text: qsTr("New or unusual drowsiness, a knock to the head, a seizure, trouble breathing, or pain that stops play: get medical help.")
    }

    foot: ActionFoot {
        text: qsTr("Back to today")
        onClicked: screen.done()
    }
}
