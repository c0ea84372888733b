pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// A full count, with the child: it sets the truth at this moment. A list, or one thing after the
/// other with its picture large; then what differs, plainly.
Sheet {
    id: screen

    required property Household household
    required property Appearance appearance
    required property Voice voice
    /// Index of the one thing that is counted; -1: the list.
    property int one: -1
    readonly property bool listed: screen.one < 0 && !box.kept

    /// The one thing has been counted.
    property bool oneSaid: false
    property string oneWords: ""

    signal done()
    signal floorCheckWanted()

    onOneChanged: screen.oneSaid = box.isSaid(screen.one)
    news: box.kept ? qsTr("Counted") : screen.one >= 0 ? screen.oneWords : ""

    function goOn() {
        if (box.kept)
            screen.done()
        else if (screen.one >= 0 && screen.one < box.count - 1)
            screen.one += 1
        else if (screen.one >= 0)
            screen.one = -1
        else if (box.keep())
            screen.toTop()
    }

    CountViewModel {
        id: box

        household: screen.household
        voice: screen.appearance.countAloud ? screen.voice : null
        onLoaded: screen.oneSaid = box.isSaid(screen.one)
    }

    Component.onDestruction: screen.voice.stop()

    header: TitleBar {
        text: box.kept ? qsTr("Counted") : qsTr("Count it all")
        backName: qsTr("Back to the box")
        onBack: screen.done()
    }

    Words {
        width: screen.contentWidth
        visible: screen.listed
        role: Theme.Body
        soft: true
        text: qsTr("Count together what lies in the box now, and look each one over. What is missing is only missing.")
    }

    StitchedLink {
        objectName: "oneByOne"
        width: Math.min(implicitWidth, screen.contentWidth)
        anchors.left: parent.left
        visible: screen.listed && box.count > 0 && !Theme.largeText
        text: qsTr("One by one, with the pictures")
        onClicked: {
            screen.one = 0
            screen.toTop()
        }
    }

    ProblemNote {
        width: screen.contentWidth
        text: box.problem
    }

    Repeater {
        model: screen.listed ? box : null

        Stepper {
            id: item

            required property string itemId
            required property string name
            required note
            required drawing
            required property int pieces
            required property int index

            objectName: "count-" + item.itemId
            width: screen.contentWidth
            text: item.name
            value: item.pieces
            valueText: Numerals.of(value)
            to: 99
            lessName: qsTr("One less: %1").arg(item.name)
            moreName: qsTr("One more: %1").arg(item.name)
            onChanged: value => box.setCounted(item.index, value)
        }
    }

    Repeater {
        model: screen.one >= 0 && !box.kept ? box : null

        CountOne {
            id: large

            required property int index
            required name
            required note
            required drawing
            required property int pieces
            required property bool said
            required expected
            required look

            width: screen.contentWidth
            visible: large.index === screen.one
            place: qsTr("%1 of %2").arg(Numerals.of(large.index + 1)).arg(Numerals.of(box.count))
            onVisibleChanged: {
                if (large.visible)
                    screen.oneWords = large.place + ": " + large.name
            }
            counted: large.said ? large.pieces : 0
            onTouched: box.countUp(large.index)
            onNamed: number => box.setCounted(large.index, number)
        }
    }

    CountResult {
        width: screen.contentWidth
        visible: box.kept
        differences: box.differences
        floorNote: box.floorNote
        onFloorCheckWanted: screen.floorCheckWanted()
    }

    foot: ActionFoot {
        text: box.kept ? qsTr("Done")
            : screen.one < 0 ? qsTr("That's what is here")
            : screen.one < box.count - 1 ? qsTr("Next") : qsTr("See the list")
        notNowReason: screen.one >= 0 && !box.kept && !screen.oneSaid ? qsTr("Count it first") : ""
        otherText: screen.one > 0 && !box.kept ? qsTr("One back") : ""
        onClicked: screen.goOn()
        onOtherClicked: screen.one -= 1
    }
}
