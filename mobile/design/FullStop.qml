pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The whole screen in reverse: nothing else until one of its answers is given.
FocusScope {
    id: stop

    property string lead: ""
    property string text: ""
    property list<string> answers
    /// Above 0: a row of numbers, 1 to this, over the first answer; the highest is picked.
    property int numbers: 0
    property int number: stop.numbers
    property string numberQuestion: ""
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

            Words {
                width: parent.width
                color: Theme.safetyText
                visible: stop.numbers > 0
                text: stop.numberQuestion
            }

            Flow {
                width: parent.width
                spacing: Theme.cardPadding
                visible: stop.numbers > 0

                Repeater {
                    model: stop.numbers

                    NumberKey {
                        id: key

                        required property int index

                        text: key.index + 1
                        picked: stop.number === key.index + 1
                        onClicked: stop.number = key.index + 1
                    }
                }
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

                    x: answer.mirrored ? column.width - width : 0
                    width: Math.min(implicitWidth, column.width)
                    ground: Theme.OnSafety
                    text: answer.modelData
                    onClicked: stop.answered(answer.index + 1)
                }
            }
        }
    }
}
