pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The paper that is written on: label, edge, and the sentence that says what is wrong.
Item {
    id: frame

    default property alias field: paper.data
    property string label: ""
    property string problem: ""
    property real paperHeight: Theme.touchTarget
    property bool focused: false
    /// What stands on it so far, for a board of letters, which a switch walks over.
    property string written: ""

    signal tapped()
    signal letterWritten(string letter)
    signal letterTakenBack()

    width: parent ? parent.width : implicitWidth
    implicitWidth: 240
    implicitHeight: column.height

    Said { text: frame.problem }

    Column {
        id: column

        width: parent.width
        spacing: Theme.smallGap

        Words {
            width: parent.width
            role: Theme.Strong
            spoken: false
            visible: text.length > 0
            text: frame.label

            TapHandler { onTapped: frame.tapped() }
        }

        PaperEdge {
            id: paper

            width: parent.width
            height: frame.paperHeight
            flat: true
            edgeColour: frame.focused || frame.problem.length > 0 ? Theme.ink : Theme.line
            edgeWidth: frame.focused ? 3 : frame.problem.length > 0 ? 2 : Theme.lineWidth
        }

        Words {
            width: parent.width
            role: Theme.Reason
            strong: true
            visible: text.length > 0
            text: frame.problem
        }
    }
}
