pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Builds

/// The kinds of box there are.
Sheet {
    id: screen

    required property Household household
    /// What stands open beside the list; empty: nothing of it.
    property string opened: ""

    signal done()
    signal designWanted(string design)

    DesignsViewModel {
        id: designs

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Kinds of box")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    EmptyState {
        width: screen.contentWidth
        visible: designs.count === 0
        drawing: "item-box"
        text: qsTr("No kind of box yet")
        note: qsTr("Say once what belongs in the standard box. Each child's box is then written as what differs from it.")
    }

    Repeater {
        model: designs

        LinkRow {
            id: row

            required property string designId
            required property string name
            required note

            objectName: "design-" + row.designId
            width: screen.contentWidth
            sign: "sign-box"
            text: row.name
            shown: screen.opened === row.designId
            onClicked: screen.designWanted(row.designId)
        }
    }

    foot: ActionFoot {
        text: qsTr("New kind of box")
        onClicked: screen.designWanted("")
    }
}
