pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// A full count, with the child: it sets the truth at this moment.
Sheet {
    id: screen

    required property Household household

    signal done()

    BoxViewModel {
        id: box

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Count it all")
        backName: qsTr("Back to the box")
        onBack: screen.done()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Body
        soft: true
        text: qsTr("Count together what lies in the box now. What is missing is only missing.")
    }

    ProblemNote {
        width: screen.contentWidth
        visible: box.problem.length > 0
        text: box.problem
    }

    Repeater {
        model: box

        Stepper {
            id: item

            required property string itemId
            required property string name
            required drawing
            required property int counted
            required property int expected
            required property int index

            objectName: "count-" + item.itemId
            width: screen.contentWidth
            text: item.name
            note: qsTr("%1 on the lid list").arg(item.expected)
            value: item.counted
            from: 0
            to: 99
            lessName: qsTr("One less: %1").arg(item.name)
            moreName: qsTr("One more: %1").arg(item.name)
            onChanged: value => box.setCounted(item.index, value)
        }
    }

    foot: ActionFoot {
        text: qsTr("That's what is here")
        onClicked: {
            if (box.keepCount())
                screen.done()
        }
    }
}
