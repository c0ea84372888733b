pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Today

/// The whole collection, for adults: each entry that is held back says why.
Sheet {
    id: screen

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand

    signal back()
    signal playBegun()

    EverythingViewModel {
        id: everything

        household: screen.household
        sitting: screen.sitting
        searched: field.text
        Component.onCompleted: everything.refresh()
    }

    TodayViewModel {
        id: today

        household: screen.household
        sitting: screen.sitting
        playInHand: screen.playInHand
        Component.onCompleted: today.refresh()
    }

    header: TitleBar {
        text: qsTr("Everything")
        backName: qsTr("Back to today")
        onBack: screen.back()
    }

    PaperField {
        id: field

        objectName: "search"
        width: screen.contentWidth
        label: qsTr("Find by name, thing or skill")
    }

    EmptyState {
        width: screen.contentWidth
        visible: everything.count === 0
        text: qsTr("Nothing is called that")
        note: qsTr("Try one word, such as dough or paper.")
    }

    Repeater {
        model: everything

        LinkRow {
            id: entry

            required property string activityId
            required property string name
            required property bool allowed
            required drawing
            required note

            objectName: "entry-" + entry.activityId
            width: screen.contentWidth
            text: entry.name
            notNowReason: entry.allowed ? "" : entry.note
            onClicked: {
                if (today.begin(entry.activityId))
                    screen.playBegun()
            }
        }
    }
}
