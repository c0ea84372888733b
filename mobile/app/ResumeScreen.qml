pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// A play from another part of the day (the battery was empty, the door bell rang): one question,
/// three answers, nothing about the kite (job.md scenario 6). One that only waited, while another
/// child's box was on the table, can also go on.
Sheet {
    id: screen

    required property PlayInHand playInHand

    signal answered()
    signal somethingDifferent()
    signal goOnWanted()
    /// Small parts are counted home before a play can end.
    signal countWanted()

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("You were playing %1").arg(screen.playInHand.activityName)
        under: screen.playInHand.beganWhen
    }

    PaperButton {
        objectName: "goOn"
        width: screen.contentWidth
        visible: !screen.playInHand.fromBefore
        text: qsTr("Go on playing")
        onClicked: screen.goOnWanted()
    }

    PaperButton {
        objectName: "stoppedEarly"
        width: screen.contentWidth
        text: qsTr("We stopped early")
        onClicked: {
            if (screen.playInHand.countFirst.length > 0)
                screen.countWanted()
            else if (screen.playInHand.stop())
                screen.answered()
        }
    }

    foot: YesFoot {
        question: qsTr("All back in the box?")
        answer: qsTr("Yes, all back")
        otherText: qsTr("Something's different")
        onClicked: {
            if (screen.playInHand.countFirst.length > 0)
                screen.countWanted()
            else if (screen.playInHand.allBack())
                screen.answered()
        }
        onOtherClicked: screen.somethingDifferent()
    }
}
