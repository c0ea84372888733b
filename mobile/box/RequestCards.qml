pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// What was asked for with its steps, and what runs low: of all items, or of one.
Column {
    id: cards

    required property Household household
    property string itemId: ""
    property bool headed: false
    readonly property int count: requests.count

    spacing: Theme.gap

    RequestViewModel {
        id: requests

        household: cards.household
        itemId: cards.itemId
    }

    SectionWords {
        width: cards.width
        visible: cards.headed
        text: qsTr("More of it")
    }

    ProblemNote {
        width: cards.width
        text: requests.problem
    }

    Repeater {
        model: requests

        RequestCard {
            id: card

            required property string itemId
            required property int index
            required property string heading
            required name
            required drawing
            required note
            required isOpen
            required step
            required saidBy
            required spoken
            required missing

            objectName: "request-" + card.itemId
            width: cards.width
            title: cards.itemId.length > 0 ? "" : card.heading
            alone: cards.itemId.length > 0
            steps: requests.steps
            packs: cards.household.therapist
            onAskWanted: requests.ask(card.index)
            onMoved: step => requests.move(card.index, step)
            onArrived: pieces => requests.countIn(card.index, pieces)
        }
    }
}
