pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A number that goes up and down by one.
Item {
    id: stepper

    property string text: ""
    property int value: 0
    property int from: 0
    property int to: 99
    property string lessName: ""
    property string moreName: ""
    property string valueText: stepper.value.toString()
    readonly property bool stacked: Theme.largeText

    signal changed(int value)

    implicitWidth: label.implicitWidth + keys.width + Theme.gap
    implicitHeight: stepper.stacked ? label.height + keys.height + Theme.smallGap
                                    : Math.max(label.height, keys.height)

    Words {
        id: label

        anchors.left: parent.left
        y: stepper.stacked ? 0 : (parent.height - height) / 2
        width: parent.width - (stepper.stacked ? 0 : keys.width + Theme.gap)
        text: stepper.text
    }

    Row {
        id: keys

        anchors.right: stepper.stacked ? undefined : parent.right
        anchors.left: stepper.stacked ? parent.left : undefined
        anchors.bottom: parent.bottom
        spacing: Theme.gap

        NumberKey {
            text: "−"
            accessibleName: stepper.lessName
            enabled: stepper.value > stepper.from
            opacity: enabled ? 1 : 0.4
            onClicked: stepper.changed(stepper.value - 1)
        }

        Words {
            y: (keys.height - height) / 2
            width: Math.max(implicitWidth, 28)
            horizontalAlignment: Text.AlignHCenter
            role: Theme.Row
            text: stepper.valueText
        }

        NumberKey {
            text: "+"
            accessibleName: stepper.moreName
            enabled: stepper.value < stepper.to
            opacity: enabled ? 1 : 0.4
            onClicked: stepper.changed(stepper.value + 1)
        }
    }
}
