pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The cloth under a play: onward, stop here, and above it what an adult presses in need: always in
/// one place, under the thumb.
Column {
    id: foot

    required property bool balloon
    property string text: ""

    signal forward()
    signal stopped()
    signal burst()
    signal wrong()

    width: parent ? parent.width : implicitWidth

    Flow {
        id: need

        width: foot.width

        CautionButton {
            id: burst

            objectName: "burst"
            width: Theme.largeText ? need.width : implicitWidth
            height: Theme.largeText ? implicitHeight : wrong.height
            visible: foot.balloon
            text: qsTr("It burst")
            onClicked: foot.burst()
        }

        CautionButton {
            id: wrong

            objectName: "wrong"
            width: need.width - (burst.visible && !Theme.largeText ? burst.width : 0)
            text: qsTr("Something is wrong")
            onClicked: foot.wrong()
        }
    }

    Item {
        width: foot.width
        implicitHeight: cloth.implicitHeight

        // Between the teeth of the cloth the bar goes on, not the page below.
        Rectangle {
            width: parent.width
            height: cloth.toothHeight
            color: Theme.safety
        }

        ActionFoot {
            id: cloth

            objectName: "playFoot"
            width: parent.width
            text: foot.text
            otherText: qsTr("Stop here")
            onClicked: foot.forward()
            onOtherClicked: foot.stopped()
        }
    }
}
