pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Workbench

/// One child's box for the one who packs it: what waits, how far the last change has come, the lid
/// list in force, and the ways on.
Sheet {
    id: screen

    required property Household household
    /// The board stands beside it: there is nothing to go back to.
    property bool besideBoard: false

    signal back()
    signal changeWanted()
    signal coachingWanted()
    signal requestsWanted()
    signal goalsWanted()
    signal printsWanted()
    signal videoWanted()

    ChildViewModel {
        id: box

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("%1's box").arg(screen.household.childTitle)
        backName: screen.besideBoard ? "" : qsTr("Back to the workbench")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: box.problem
    }

    Repeater {
        model: box.matters

        Card {
            id: matter

            required property string modelData
            required property int index

            width: screen.contentWidth

            Words {
                width: parent.width
                role: Theme.Label
                heading: true
                text: matter.modelData
            }

            Words {
                width: parent.width
                role: Theme.Body
                text: box.matterLines[matter.index] ?? ""
            }
        }
    }

    Words {
        objectName: "change"
        width: screen.contentWidth
        role: Theme.Reason
        visible: text.length > 0
        text: box.changeWords
    }

    LinkRow {
        objectName: "requests"
        width: screen.contentWidth
        sign: "sign-box"
        text: qsTr("What is asked for")
        onClicked: screen.requestsWanted()
    }

    LinkRow {
        objectName: "coaching"
        width: screen.contentWidth
        sign: "sign-people"
        text: qsTr("Handing over")
        note: qsTr("Six lines: the parent does each")
        onClicked: screen.coachingWanted()
    }

    LinkRow {
        objectName: "goals"
        width: screen.contentWidth
        sign: "sign-notebook"
        text: qsTr("Goals")
        onClicked: screen.goalsWanted()
    }

    LinkRow {
        objectName: "prints"
        width: screen.contentWidth
        sign: "sign-notebook"
        text: qsTr("To print")
        onClicked: screen.printsWanted()
    }

    LinkRow {
        objectName: "video"
        width: screen.contentWidth
        sign: "sign-people"
        text: qsTr("Plan a video session")
        onClicked: screen.videoWanted()
    }

    SectionWords {
        width: screen.contentWidth
        visible: box.shared.length > 0
        text: qsTr("Shared by the family")
    }

    Repeater {
        model: box.shared

        Words {
            required property string modelData

            width: screen.contentWidth
            text: modelData
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: box.listWords.length > 0
        text: box.listWords
    }

    Repeater {
        model: box

        PicturedWords {
            required property string itemId
            required property string name
            required drawing
            required note

            objectName: "listed-" + itemId
            width: screen.contentWidth
            text: name
        }
    }

    foot: ActionFoot {
        text: qsTr("Change the box")
        onClicked: screen.changeWanted()
    }
}
