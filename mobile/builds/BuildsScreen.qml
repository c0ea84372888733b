pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Builds

/// All builds, newest first: what was, and what is bought for next.
Sheet {
    id: screen

    required property Household household
    property bool writing: false
    /// What stands open beside the list: a build, "designs" or "shelf"; empty: nothing of it.
    property string opened: ""

    signal done()
    signal buildWanted(string build)
    signal designsWanted()
    signal shelfWanted()

    BuildsViewModel {
        id: builds

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Builds and buying")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    ProblemNote {
        objectName: "problem"
        width: screen.contentWidth
        text: builds.problem
    }

    EmptyState {
        width: screen.contentWidth
        visible: builds.count === 0 && !screen.writing
        drawing: "item-box"
        text: qsTr("No build yet")
        note: builds.designs === 0
              ? qsTr("A build is a pile of boxes that are bought for and packed together. First say what belongs in a kind of box.")
              : qsTr("A build is a pile of boxes that are bought for and packed together.")
    }

    BuildHead {
        id: head

        objectName: "newBuild"
        width: screen.contentWidth
        visible: screen.writing
        dayWords: builds.dayWords
        spares: builds.spares
        keepText: qsTr("Begin this build")
        onDayMoved: days => builds.moveDay(days)
        onSparesWanted: percent => builds.spares = percent
        onKept: {
            const id = builds.start(head.name, head.currency)
            if (id.length > 0)
                screen.buildWanted(id)
            else
                screen.toTop() // where it stands what is wrong
        }
    }

    Repeater {
        model: builds

        LinkRow {
            id: row

            required property string buildId
            required property string name
            required note

            objectName: "build-" + row.buildId
            width: screen.contentWidth
            sign: "sign-box"
            text: row.name
            shown: screen.opened === row.buildId
            onClicked: screen.buildWanted(row.buildId)
        }
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("What builds are made of")
    }

    LinkRow {
        objectName: "designs"
        width: screen.contentWidth
        drawing: "item-box"
        text: qsTr("Kinds of box")
        note: qsTr("What belongs in each, and how much play it brings.")
        shown: screen.opened === "designs"
        onClicked: screen.designsWanted()
    }

    LinkRow {
        objectName: "shelf"
        width: screen.contentWidth
        sign: "sign-count"
        text: qsTr("Shelf and shops")
        note: qsTr("What lies there, packs and prices.")
        shown: screen.opened === "shelf"
        onClicked: screen.shelfWanted()
    }

    foot: ActionFoot {
        text: screen.writing ? qsTr("Not now") : qsTr("New build")
        onClicked: {
            screen.writing = !screen.writing
            screen.toTop()
        }
    }
}
