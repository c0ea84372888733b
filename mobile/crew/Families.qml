pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// The families whose boxes are on this phone: one more, or one less. Nothing is shared between them.
Column {
    id: families

    required property Household household

    signal anotherWanted()
    signal takeOffWanted()

    spacing: Theme.gap

    Repeater {
        model: families.household.unreadable

        ProblemNote {
            required property string modelData

            width: families.width
            text: modelData
        }
    }

    Repeater {
        model: families.household.takenOff

        Card {
            id: gone

            required property string modelData
            required property int index

            width: families.width

            Words {
                width: parent.width
                role: Theme.Label
                text: qsTr("Off this phone: %1").arg(gone.modelData)
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: qsTr("Gone for good when Lidlark is closed.")
            }

            StitchedLink {
                anchors.left: parent.left
                text: qsTr("Bring it back")
                accessibleName: qsTr("Bring it back: %1").arg(gone.modelData)
                onClicked: families.household.bringBack(gone.index)
            }
        }
    }

    LinkRow {
        objectName: "anotherFamily"
        width: families.width
        sign: "sign-box"
        text: qsTr("Another family's box")
        note: qsTr("For whoever looks after several children. Nothing is shared between the families.")
        onClicked: families.anotherWanted()
    }

    TakeOff {
        width: families.width
        visible: families.household.severalFamilies
        names: families.household.familyNames
        onWanted: families.takeOffWanted()
    }
}
