pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The whole screen in reverse: nothing else until one of its answers is given. What is laid in it
/// stands between the words and the answers. `urgent` stays in sight at the foot, whatever scrolls.
FocusScope {
    id: stop

    default property alias contents: middle.data
    property string lead: ""
    property string text: ""
    property list<string> answers
    property string notNowReason: ""
    property string urgent: ""
    readonly property string firstAnswer: stop.answers.length > 0 ? stop.answers[0] : ""

    signal answered(int index)
    signal urgentClicked()

    implicitWidth: column.implicitWidth
    implicitHeight: column.height + foot.height
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

    // Other words are read from their beginning.
    onTextChanged: scroller.contentY = 0
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

        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: foot.top
        contentHeight: Math.max(scroller.height, column.height)
        clip: interactive && foot.height > 0
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height

        Column {
            id: column

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.leftMargin: Theme.margin + 2
            anchors.rightMargin: Theme.margin + 2
            y: Math.max(0, (scroller.height - height) / 2)
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

            Column {
                id: middle

                width: parent.width
                spacing: Theme.gap
                visible: children.length > 0
            }

            Slip {
                width: parent.width
                visible: stop.firstAnswer.length > 0
                notNowReason: stop.notNowReason
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

                    x: answer.mirrored ? column.width - width : 0
                    width: Math.min(implicitWidth, column.width)
                    ground: Theme.OnSafety
                    text: answer.modelData
                    onClicked: stop.answered(answer.index + 1)
                }
            }
        }
    }

    Item {
        id: foot

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: stop.urgent.length > 0 ? urgentButton.height + 1 : 0
        visible: stop.urgent.length > 0

        Rectangle {
            width: parent.width
            height: 1
            color: Theme.safetyText
        }

        CautionButton {
            id: urgentButton

            y: 1
            width: parent.width
            text: stop.urgent
            onClicked: stop.urgentClicked()
        }
    }
}
