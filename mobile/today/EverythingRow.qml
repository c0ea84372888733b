pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One entry of the collection; the first of a group carries the group's heading.
Column {
    id: entry

    required property string activityId
    required property string name
    required property string note
    required property string drawing
    required property bool allowed
    required property string head

    signal chosen()

    spacing: Theme.chipGap

    SectionWords {
        width: entry.width
        visible: entry.head.length > 0
        text: entry.head
    }

    LinkRow {
        objectName: "entry-" + entry.activityId
        width: entry.width
        text: entry.name
        note: entry.note
        notNowReason: entry.allowed ? "" : entry.note
        onClicked: entry.chosen()
    }
}
