pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// A guest's days with the box are over: what was noted stays, nothing more can be opened.
Sheet {
    id: screen

    required property Household household

    Drawing {
        x: (screen.contentWidth - width) / 2
        width: 2 * Theme.itemLarge
        height: width
        name: "item-box"
        alt: qsTr("The box, closed")
    }

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Your days with this box are over")
    }

    Words {
        objectName: "ended"
        width: screen.contentWidth
        role: Theme.Step
        text: qsTr("They ended on %1. What you noted stays with the family, signed %2.")
            .arg(screen.household.guestUntil).arg(screen.household.person)
    }

    Words {
        width: screen.contentWidth
        soft: true
        text: qsTr("The family can ask you again.")
    }
}
