pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// The therapist's own things, and those of ours that measure otherwise: drafts, and those that
/// count in boxes.
Sheet {
    id: screen

    required property Household household

    signal back()
    signal wanted(string entry)

    OwnItemListViewModel {
        id: own

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Things of your own")
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
        drawing: "item-box"
        text: qsTr("Nothing of your own yet")
        note: qsTr("Write and measure what you play with, and it goes through the same checks as ours. Where one of ours measures otherwise, say so on its page of the shelf.")
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
            onClicked: screen.wanted(row.entry)
        }
    }

    foot: ActionFoot {
        text: qsTr("Write a new thing")
        onClicked: screen.wanted(own.fresh())
    }
}
