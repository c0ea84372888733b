pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Under fewer than three offers: what would bring more.
Column {
    id: few

    required property bool none
    required property string problem
    required property string help

    signal everythingWanted()

    spacing: Theme.smallGap
    visible: few.none || few.help.length > 0

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
}
