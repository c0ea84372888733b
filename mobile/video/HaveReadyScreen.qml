pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Video

/// The family's side of a video session: when it is, what will be played, what to have ready.
Sheet {
    id: screen

    required property Household household

    signal done()

    HaveReadyViewModel {
        id: ready

        household: screen.household
    }

    news: ready.partsSaid

    header: TitleBar {
        text: qsTr("Have ready")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    ProblemNote {
        width: screen.contentWidth
        text: ready.problem
    }

    EmptyState {
        width: screen.contentWidth
        visible: ready.when.length === 0
        drawing: "sign-box"
        text: qsTr("No video session is planned.")
    }

    Words {
        width: screen.contentWidth
        visible: ready.when.length > 0
        text: qsTr("Video session: %1").arg(ready.when)
    }

    Repeater {
        model: ready.parts

        Words {
            required property string modelData
            required property int index

            objectName: "part-" + index
            width: screen.contentWidth
            role: Theme.Row
            text: modelData
        }
    }

    Words {
        width: screen.contentWidth
        visible: text.length > 0
        role: Theme.Reason
        soft: true
        text: ready.note
    }

    Repeater {
        model: ready

        HaveReadyRow {
            id: row

            required property string itemId
            required property int index
            required heading
            required name
            required drawing
            required note
            required here
            required missing

            objectName: "ready-" + row.itemId
            width: screen.contentWidth
            onSaid: here => ready.say(row.index, here)
        }
    }

    foot: ActionFoot {
        text: qsTr("Done")
        onClicked: screen.done()
    }
}
