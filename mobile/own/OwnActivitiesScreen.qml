pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// The therapist's own activities: drafts, and those that lie in boxes. A new one begins empty, or
/// with the words of one of ours.
Sheet {
    id: screen

    required property Household household
    property bool copying: false
    /// What stands open beside the list; empty: nothing of it.
    property string opened: ""

    signal back()
    signal wanted(string entry)

    function begin(from: string) {
        const entry = own.start(from)
        if (entry.length > 0)
            screen.wanted(entry)
    }

    OwnListViewModel {
        id: own

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Activities of your own")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    news: own.problem

    ProblemNote {
        width: screen.contentWidth
        text: own.problem
    }

    EmptyState {
        width: screen.contentWidth
        visible: own.count === 0
        drawing: "item-book"
        text: qsTr("Nothing of your own yet")
        note: qsTr("Write what you play with one child, in the same parts as ours. It goes through the same checks, and then to the boxes you choose.")
    }

    Repeater {
        model: own

        LinkRow {
            id: row

            required property string entry
            required property string name
            required drawing
            required note

            objectName: "own-" + row.entry
            width: screen.contentWidth
            text: row.name
            shown: screen.opened === row.entry
            onClicked: screen.wanted(row.entry)
        }
    }

    PaperButton {
        objectName: "copyOne"
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        text: screen.copying ? qsTr("Close the list") : qsTr("Begin with one of ours")
        onClicked: screen.copying = !screen.copying
    }

    PaperField {
        id: find

        objectName: "findModel"
        width: screen.contentWidth
        visible: screen.copying
        label: qsTr("Find it by its name")
    }

    Repeater {
        model: screen.copying ? own.models(find.text) : []

        LinkRow {
            id: model

            required property string modelData

            objectName: "model-" + model.modelData
            width: screen.contentWidth
            drawing: own.modelDrawing(model.modelData)
            text: own.modelName(model.modelData)
            accessibleName: qsTr("Begin with the words of %1").arg(model.text)
            onClicked: screen.begin(model.modelData)
        }
    }

    foot: ActionFoot {
        text: qsTr("Write a new one")
        onClicked: screen.begin("")
    }
}
