pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Another child's box in the middle of a play: the play waits where it is.
Sheet {
    id: screen

    required property Household household
    /// What waits.
    required property string activityName

    signal back()
    signal chosen(string family, string alias)

    header: TitleBar {
        text: qsTr("Whose box?")
        backName: qsTr("Back to the play")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        soft: true
        text: qsTr("%1 waits with %2.").arg(screen.activityName).arg(screen.household.childTitle)
    }

    Repeater {
        model: screen.household.phoneChildren

        LinkRow {
            id: row

            required property string childName
            required property string label
            required property string family
            required property bool picked

            objectName: "whose-" + row.label
            width: screen.contentWidth
            visible: !row.picked
            sign: "sign-box"
            text: qsTr("%1's box").arg(row.label)
            onClicked: screen.chosen(row.family, row.childName)
        }
    }
}
