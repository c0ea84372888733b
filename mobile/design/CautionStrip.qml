pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The caution of a play, from edge to edge: who sits where, then what and when to stop.
/// In large text only the lead stays here; a second strip with `whole` on says the rest.
Rectangle {
    id: strip

    property string lead: ""
    property string text: ""
    property bool whole: !Theme.largeText

    implicitWidth: column.implicitWidth + 2 * (Theme.margin + 2)
    implicitHeight: column.implicitHeight + 29
    color: Theme.safety

    Accessible.role: Accessible.AlertMessage
    Accessible.name: strip.lead.length > 0 && strip.text.length > 0 ? strip.lead + " " + strip.text : strip.lead + strip.text

    Column {
        id: column

        x: Theme.margin + 2
        y: 14
        width: strip.width - 2 * column.x
        spacing: Theme.smallGap

        Words {
            width: parent.width
            role: Theme.CautionLead
            color: Theme.safetyText
            spoken: false
            visible: strip.lead.length > 0
            text: strip.lead
        }

        Words {
            width: parent.width
            role: Theme.Reason
            color: Theme.safetyText
            spoken: false
            visible: strip.whole && strip.text.length > 0
            text: strip.text
        }
    }
}
