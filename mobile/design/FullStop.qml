pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The whole screen in reverse: nothing else until one of its answers is given.
FocusScope {
    id: stop

    property string lead: ""
    property string text: ""
    property list<string> answers
    readonly property string firstAnswer: stop.answers.length > 0 ? stop.answers[0] : ""

    signal answered(int index)

    implicitWidth: column.implicitWidth
    implicitHeight: column.height
    focus: true

    Accessible.role: Accessible.AlertMessage
    Accessible.name: stop.text.length > 0 ? stop.lead + " " + stop.text : stop.lead

    readonly property Item focused: Window.activeFocusItem

    function showItem(item: Item) {
        const y = item.mapToItem(scroller.contentItem, 0, 0).y
        if (y < scroller.contentY)
            scroller.contentY = y
        else if (y + item.height > scroller.contentY + scroller.height)
            scroller.contentY = Math.min(scroller.contentHeight - scroller.height, y + item.height - scroller.height + Theme.gap)
    }

    onFocusedChanged: {
        for (let above = stop.focused; above; above = above.parent) {
            if (above === column)
                stop.showItem(stop.focused)
        }
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.safety
    }

    // What lies below must not be reached while the question stands.
    MouseArea { anchors.fill: parent }

    Flickable {
        id: scroller

        anchors.fill: parent
        contentHeight: Math.max(stop.height, column.height)
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height

        Column {
            id: column

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.leftMargin: Theme.margin + 2
            anchors.rightMargin: Theme.margin + 2
            y: Math.max(0, (stop.height - height) / 2)
            topPadding: Theme.sectionGap
            bottomPadding: Theme.sectionGap
            spacing: Theme.sectionGap

            Words {
                width: parent.width
                role: Theme.Heading
                color: Theme.safetyText
                spoken: false
                text: stop.lead
            }

            Words {
                width: parent.width
                color: Theme.safetyText
                spoken: false
                visible: stop.text.length > 0
                text: stop.text
            }

            Slip {
                width: parent.width
                ground: Theme.OnSafety
                text: stop.firstAnswer
                onClicked: stop.answered(0)
            }

            Repeater {
                model: stop.answers.slice(1)

                StitchedLink {
                    id: answer

                    required property int index
                    required property string modelData

                    anchors.left: parent.left
                    width: Math.min(implicitWidth, column.width)
                    ground: Theme.OnSafety
                    text: answer.modelData
                    onClicked: stop.answered(answer.index + 1)
                }
            }
        }
    }
}
