pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// A name, and a yes to sharing, with a no of the same weight.
Column {
    id: who

    required property JoiningIn joining
    readonly property string missing: who.joining.busy ? qsTr("One moment.")
                                    : who.joining.person.trim().length === 0 ? qsTr("Your name first; a letter will do.") : ""

    signal notNow()

    spacing: Theme.sectionGap

    PaperField {
        objectName: "joinName"
        width: who.width
        label: qsTr("What are you called here?")
        text: who.joining.person
        maximumLength: 20
        onEdited: who.joining.person = text
    }

    WhatGoesOut {
        width: who.width
        question: qsTr("Join, and share in this way?")
        yes: qsTr("Join")
        notNowReason: who.missing
        onAgreed: who.joining.next()
        onNotNow: who.notNow()
    }
}
