pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Builds

/// One build: its boxes, what is special about each, and more of them, said before they are kept.
Sheet {
    id: screen

    required property Household household
    required property string build
    property bool writing: false
    /// The box that stands open beside the list; empty: none of it.
    property string opened: ""

    signal done()
    signal boxWanted(string code)
    signal sheetWanted()
    signal designsWanted()

    BuildViewModel {
        id: boxes

        household: screen.household
        build: screen.build
    }

    header: TitleBar {
        text: boxes.name
        backName: qsTr("Back")
        onBack: screen.done()
    }

    news: boxes.costLines[0] ?? ""

    ProblemNote {
        objectName: "problem"
        width: screen.contentWidth
        text: boxes.problem
    }

    Words {
        width: screen.contentWidth
        text: boxes.headWords
    }

    Words {
        width: screen.contentWidth
        visible: text.length > 0
        strong: true
        text: boxes.boughtWords
    }

    StitchedLink {
        objectName: "changeHead"
        anchors.left: parent.left
        text: screen.writing ? qsTr("Leave it as it was") : qsTr("Change name, day, spares")
        onClicked: {
            head.name = boxes.name
            head.currency = boxes.currency
            screen.writing = !screen.writing
        }
    }

    BuildHead {
        id: head

        width: screen.contentWidth
        visible: screen.writing
        dayWords: boxes.dayWords
        spares: boxes.spares
        keepText: qsTr("Keep this")
        onDayMoved: days => boxes.moveDay(days)
        onSparesWanted: percent => boxes.spares = percent
        onKept: {
            if (boxes.keepHead(head.name, head.currency))
                screen.writing = false
            else
                screen.toTop()
        }
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Boxes: %1").arg(Numerals.of(boxes.count))
    }

    Repeater {
        model: boxes

        LinkRow {
            id: row

            required property string code
            required property string whose
            required property bool special
            required note

            objectName: "box-" + row.code
            width: screen.contentWidth
            sign: "sign-box"
            text: qsTr("%1 for %2").arg(row.code).arg(row.whose)
            shown: screen.opened === row.code
            endText: row.special ? qsTr("Special") : ""
            onClicked: screen.boxWanted(row.code)
            Component.onCompleted: {
                if (row.shown)
                    screen.held = row
            }
        }
    }

    MoreBoxes {
        id: more

        width: screen.contentWidth
        designIds: boxes.designIds
        designNames: boxes.designNames
        design: boxes.design
        childrenLeft: boxes.childrenLeft
        thought: boxes.thought
        thoughtLines: boxes.thoughtLines
        costLines: boxes.costLines
        onDesignChosen: design => boxes.design = design
        onChildChosen: child => {
            screen.held = more.answer
            boxes.thinkOf([child])
        }
        onAllChosen: {
            screen.held = more.answer
            boxes.thinkOf(boxes.childrenLeft)
        }
        onSomeChosen: count => {
            screen.held = more.answer
            boxes.thinkOfSome(count)
        }
        onForgotten: boxes.forget()
        onAdded: boxes.add()
        onDesignsWanted: screen.designsWanted()
    }

    foot: ActionFoot {
        text: qsTr("Build sheet")
        notNowReason: boxes.count === 0 ? qsTr("There is no box in it yet") : ""
        onClicked: screen.sheetWanted()
    }
}
