pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// What can be done about the crew.
Column {
    id: links

    required property Household household
    required property CrewLife crewLife

    signal letInWanted()
    signal placeWanted()
    signal seesWanted()
    signal aboutMeWanted()
    signal handOverWanted()

    spacing: Theme.gap

    SectionWords {
        width: links.width
        text: qsTr("Sharing with others")
    }

    LinkRow {
        objectName: "letIn"
        width: links.width
        visible: links.crewLife.mayLetIn
        sign: "sign-crew"
        text: qsTr("Let somebody in")
        note: links.crewLife.table ? qsTr("The phone of somebody who packs too") : qsTr("Another parent, family, a guest, the therapist")
        onClicked: links.letInWanted()
    }

    LinkRow {
        objectName: "sharedPlace"
        width: links.width
        text: qsTr("Shared place")
        note: links.crewLife.place.length > 0 ? links.crewLife.place : qsTr("None. Sharing is off.")
        onClicked: links.placeWanted()
    }

    LinkRow {
        objectName: "handOver"
        width: links.width
        visible: links.crewLife.inCrew
        text: qsTr("Hand over a file")
        note: qsTr("Where there is no network: on a stick, or from phone to phone")
        onClicked: links.handOverWanted()
    }

    LinkRow {
        objectName: "sees"
        width: links.width
        visible: !links.crewLife.table
        text: qsTr("What each can see")
        onClicked: links.seesWanted()
    }

    LinkRow {
        objectName: "aboutMe"
        width: links.width
        visible: !links.crewLife.table
        text: qsTr("What this keeps about me")
        note: qsTr("For %1 to read, or to have read aloud").arg(links.household.child)
        onClicked: links.aboutMeWanted()
    }
}
