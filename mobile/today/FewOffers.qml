pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Under the offers, quietly: what gave way; with fewer than three, what would bring more.
Column {
    id: few

    required property bool none
    required property string problem
    required property string help
    required property list<string> gaveWay

    signal everythingWanted()

    spacing: Theme.smallGap
    visible: few.none || few.help.length > 0 || few.gaveWay.length > 0

    EmptyState {
        objectName: "noOffers"
        width: few.width
        visible: few.none && few.problem.length === 0
        drawing: "item-box"
        text: qsTr("Nothing fits just now")
        note: few.help
        actionText: qsTr("Everything")
        onAction: few.everythingWanted()
    }

    Words {
        objectName: "help"
        width: few.width
        visible: !few.none && few.help.length > 0
        role: Theme.Reason
        soft: true
        text: few.help
    }

    Repeater {
        model: few.gaveWay

        Words {
            required property string modelData

            width: few.width
            role: Theme.Reason
            soft: true
            text: modelData
        }
    }
}
