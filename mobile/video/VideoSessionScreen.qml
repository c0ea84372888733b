pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Video

/// The session as the therapist has it beside the camera.
Sheet {
    id: screen

    required property Household household

    signal done()

    VideoSessionViewModel {
        id: session

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("The session")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    ProblemNote {
        width: screen.contentWidth
        text: session.problem
    }

    Words {
        width: screen.contentWidth
        visible: session.when.length === 0
        text: qsTr("No video session is planned.")
    }

    Words {
        width: screen.contentWidth
        visible: text.length > 0
        strong: true
        text: session.when
    }

    Words {
        objectName: "family"
        width: screen.contentWidth
        visible: text.length > 0
        text: session.family
    }

    Words {
        width: screen.contentWidth
        visible: text.length > 0
        role: Theme.Reason
        soft: true
        text: session.note
    }

    SectionWords {
        width: screen.contentWidth
        visible: session.ownBox.length > 0
        text: qsTr("Take out of your own box")
    }

    Words {
        width: screen.contentWidth
        visible: session.ownBox.length > 0
        text: session.ownBox
    }

    Repeater {
        model: session

        Card {
            id: part

            required property string time
            required property string name
            required property string drawing
            required property string note
            required property string easier
            required property string harder
            required property int index

            objectName: "session-part-" + part.index
            width: screen.contentWidth
            spacing: Theme.chipGap

            PicturedWords {
                side: Theme.itemLarge
                stacked: Theme.largeText
                drawing: part.drawing
                text: qsTr("%1 %2").arg(part.time).arg(part.name)
                note: part.note
            }

            Words {
                width: parent.width
                role: Theme.Reason
                visible: part.easier.length > 0
                text: qsTr("Easier: %1").arg(part.easier)
            }

            Words {
                width: parent.width
                role: Theme.Reason
                visible: part.harder.length > 0
                text: qsTr("Harder: %1").arg(part.harder)
            }
        }
    }

    Words {
        width: screen.contentWidth
        visible: session.when.length > 0
        role: Theme.Reason
        soft: true
        text: qsTr("The last five minutes: what did you see, and what is next?")
    }

    foot: ActionFoot {
        text: qsTr("Done")
        onClicked: screen.done()
    }
}
