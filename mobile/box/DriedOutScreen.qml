pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// It has dried out: try to rescue it, or throw it away and ask for another (job.md scenario 4).
Sheet {
    id: screen

    required property Household household
    required property string itemId
    property bool trying: false

    signal back()
    /// It is soft again, and stays.
    signal rescued()
    signal thrownAway()

    ItemViewModel {
        id: item

        household: screen.household
        itemId: screen.itemId
    }

    header: TitleBar {
        text: item.name
        backName: qsTr("Back")
        onBack: screen.trying ? screen.trying = false : screen.back()
    }

    FullBleed {
        visible: pet.lead.length > 0
        sheetMargin: screen.margin
        sheetWidth: screen.width

        CautionStrip {
            id: pet

            width: parent.width
            lead: item.petNotice
        }
    }

    ProblemNote {
        width: screen.contentWidth
        text: item.problem
    }

    PicturedWords {
        width: screen.contentWidth
        side: Theme.itemLarge
        role: Theme.Heading
        heading: true
        drawing: item.drawing
        text: screen.trying ? qsTr("Try to rescue it") : qsTr("It has dried out")
        note: screen.trying ? "" : qsTr("That happens. It keeps its date if it is rescued.")
    }

    Repeater {
        model: screen.trying ? item.rescue : []

        Words {
            required property string modelData

            width: screen.contentWidth
            text: modelData
        }
    }

    PaperButton {
        objectName: "rescue"
        width: screen.contentWidth
        visible: !screen.trying
        text: qsTr("Try to rescue it")
        onClicked: screen.trying = true
    }

    PaperButton {
        objectName: "softAgain"
        width: screen.contentWidth
        visible: screen.trying
        text: qsTr("It is soft again")
        onClicked: {
            if (item.noteGood())
                screen.rescued()
        }
    }

    PaperButton {
        objectName: "throwAway"
        width: screen.contentWidth
        text: screen.trying ? qsTr("Still hard: throw it away") : qsTr("Throw it away")
        onClicked: {
            if (item.throwAway())
                screen.thrownAway()
        }
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        visible: !screen.household.guest
        text: qsTr("Thrown away, another is asked for.")
    }
}
