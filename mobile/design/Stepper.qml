pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A number that goes up and down by one, and on and on while a key is held.
Item {
    id: stepper

    property string text: ""
    property string note: ""
    property string drawing: ""
    property int value: 0
    property int from: 0
    property int to: 99
    property string lessName: ""
    property string moreName: ""
    property string valueText: stepper.value.toString()
    readonly property real labelRoom: stepper.width - picture.width - keys.width - 2 * Theme.gap
    /// No word is broken.
    readonly property bool stacked: Theme.largeText || longest.room > stepper.labelRoom
    readonly property bool mirrored: LayoutMirroring.enabled
    /// By these names Qt tells a screen reader the bounds.
    readonly property int minimumValue: stepper.from
    readonly property int maximumValue: stepper.to

    signal changed(int value)

    function changeBy(step: int) {
        const value = stepper.value + step
        if (value >= stepper.from && value <= stepper.to)
            stepper.changed(value)
    }

    Accessible.role: Accessible.SpinBox
    Accessible.name: stepper.text + ": " + stepper.valueText
    Accessible.description: stepper.note
    Accessible.onIncreaseAction: stepper.changeBy(1)
    Accessible.onDecreaseAction: stepper.changeBy(-1)

    implicitWidth: picture.width + label.implicitWidth + keys.width + Theme.gap
    implicitHeight: stepper.stacked ? label.height + keys.height + Theme.smallGap
                                    : Math.max(label.height, keys.height, picture.height)

    Rectangle {
        anchors.fill: picture
        visible: picture.width > 0 && Theme.scheme === Theme.Dark
        radius: Theme.radiusPaper
        color: Theme.picture
    }

    Drawing {
        id: picture

        anchors.left: parent.left
        y: (label.height - height) / 2 + label.y
        width: stepper.drawing.length > 0 ? Theme.itemSmall : 0
        height: width
        name: stepper.drawing
    }

    Column {
        id: label

        anchors.left: picture.right
        anchors.leftMargin: picture.width > 0 ? Theme.gap : 0
        y: stepper.stacked ? 0 : (parent.height - height) / 2
        width: parent.width - picture.width - anchors.leftMargin - (stepper.stacked ? 0 : keys.width + Theme.gap)
        spacing: 2

        Words {
            id: name

            width: parent.width
            strong: stepper.note.length > 0
            spoken: false
            text: stepper.text

            LongestWord {
                id: longest

                font: name.font
                text: stepper.text
            }
        }

        Words {
            width: parent.width
            role: Theme.Caption
            soft: true
            visible: text.length > 0
            spoken: false
            text: stepper.note
        }
    }

    // Less lies left of more in every script: counts keep their order.
    Row {
        id: keys

        LayoutMirroring.enabled: false
        layoutDirection: Qt.LeftToRight
        x: stepper.mirrored === stepper.stacked ? parent.width - width : 0
        anchors.bottom: parent.bottom
        spacing: Theme.gap

        NumberKey {
            text: "−"
            pressedOften: true
            autoRepeat: true
            autoRepeatDelay: 600
            accessibleName: stepper.lessName
            enabled: stepper.value > stepper.from
            opacity: enabled ? 1 : 0.4
            onClicked: stepper.changeBy(-1)
        }

        Words {
            y: (keys.height - height) / 2
            width: Math.max(implicitWidth, 28)
            horizontalAlignment: Text.AlignHCenter
            role: Theme.Row
            spoken: false
            text: stepper.valueText
        }

        NumberKey {
            text: "+"
            pressedOften: true
            autoRepeat: true
            autoRepeatDelay: 600
            accessibleName: stepper.moreName
            enabled: stepper.value < stepper.to
            opacity: enabled ? 1 : 0.4
            onClicked: stepper.changeBy(1)
        }
    }
}
