pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Prints

/// What can be printed for this child, and where the lid is older than the list.
Sheet {
    id: screen

    required property Household household
    /// The print that stands open beside the list; empty: none does.
    property string opened: ""

    signal back()
    signal printWanted(string what)

    PrintsViewModel {
        id: prints

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("On paper")
        backName: qsTr("Back to the box")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        text: qsTr("Look at each page here first. It is kept as a file that any printer takes.")
    }

    ProblemNote {
        objectName: "lidOutOfDate"
        width: screen.contentWidth
        text: prints.outOfDate
    }

    Repeater {
        model: prints

        LinkRow {
            id: row

            required property string print
            required property string name
            required note

            objectName: "print-" + row.print
            width: screen.contentWidth
            text: row.name
            shown: screen.opened === row.print
            onClicked: screen.printWanted(row.print)
        }
    }
}
