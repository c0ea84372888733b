pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// What must leave the house since somebody here must avoid it: each thing with its picture, and an
/// adult's word that it is out.
Sheet {
    id: screen

    required property Household household

    signal done()
    signal emergencyWanted()

    TakeOutViewModel {
        id: takeOut

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Take out of the house")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    Column {
        x: -Theme.margin
        width: screen.width

        CautionStrip {
            width: parent.width
            whole: true
            lead: takeOut.lead
            text: takeOut.text
        }

        CautionButton {
            objectName: "wrong"
            width: parent.width
            text: qsTr("Something is wrong")
            onClicked: screen.emergencyWanted()
        }
    }

    ProblemNote {
        width: screen.contentWidth
        text: takeOut.problem
    }

    Repeater {
        model: takeOut

        TakeOutRow {
            id: row

            required property string itemId
            required property int index
            required heading
            required name
            required drawing
            required note
            required stays
            required out

            objectName: "take-out-" + row.itemId
            width: screen.contentWidth
            onConfirmed: takeOut.confirm(row.index)
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: takeOut.atHome.length > 0
        text: qsTr("Look round the house too")
    }

    Repeater {
        model: takeOut.atHome

        Words {
            required property string modelData

            width: screen.contentWidth
            role: Theme.Body
            text: modelData
        }
    }

    Repeater {
        model: takeOut.said

        Words {
            required property string modelData

            width: screen.contentWidth
            role: Theme.Reason
            soft: true
            text: modelData
        }
    }

    foot: ActionFoot {
        text: takeOut.allOut ? qsTr("Done") : qsTr("The rest later")
        onClicked: screen.done()
    }
}
