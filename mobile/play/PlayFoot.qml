pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The cloth under a play: onward, stop here, and for a balloon "It burst" above it.
Column {
    id: foot

    required property bool balloon
    property string text: ""

    signal forward()
    signal stopped()
    signal burst()

    width: parent ? parent.width : implicitWidth

    CautionButton {
        objectName: "burst"
        width: foot.width
        visible: foot.balloon
        text: qsTr("It burst")
        onClicked: foot.burst()
    }

    ActionFoot {
        objectName: "playFoot"
        width: foot.width
        text: foot.text
        otherText: qsTr("Stop here")
        onClicked: foot.forward()
        onOtherClicked: foot.stopped()
    }
}
