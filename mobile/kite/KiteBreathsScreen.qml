pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Kite

/// Four slow breaths, with a moving picture to follow (checkin.md 5; children of seven needed such a
/// guide: source E8 there). The adult breathes, whether or not the child does. It ends by itself,
/// one tap ends it sooner, and nothing is made of either.
Sheet {
    id: screen

    /// Common practice, no source: about four seconds in, and as many out.
    property int halfMs: 4000
    readonly property int halves: 8
    /// Before the first one there is a moment to look.
    property int half: -1
    readonly property bool over: screen.half >= screen.halves
    readonly property bool lettingOut: screen.half >= 0 && !screen.over && screen.half % 2 === 0
    property real out: screen.lettingOut ? 1 : 0

    signal done()

    Behavior on out {
        enabled: !Theme.reducedMotion

        NumberAnimation {
            duration: screen.halfMs
            easing.type: Easing.InOutSine
        }
    }

    Timer {
        interval: screen.half < 0 ? screen.halfMs / 2 : screen.halfMs
        running: !screen.over
        repeat: true
        onTriggered: screen.half += 1
    }

    // On a phone lying down the picture stands beside the words.
    Item {
        id: page

        readonly property bool beside: screen.width > screen.height
        readonly property real room: screen.middleHeight - Theme.gap - (page.beside ? Theme.gap : words.height + Theme.gap)

        width: screen.contentWidth
        height: page.beside ? Math.max(words.height, guide.height + Theme.gap) : guide.y + guide.height

        ScreenTitle {
            id: words

            objectName: "breathWords"
            width: page.beside ? page.width / 2 - Theme.gap : page.width
            over: qsTr("Four kite breaths")
            text: screen.over ? qsTr("That was four. Stay near.")
                : screen.half < 0 ? qsTr("Look at the kite")
                : screen.lettingOut ? qsTr("In: string out") : qsTr("Out: string in")
            under: screen.over ? qsTr("The string is in.") : qsTr("You breathe. Your child may.")
        }

        BreathingKite {
            id: guide

            objectName: "breathingKite"
            anchors.right: page.right
            y: page.beside ? Theme.gap : words.height + Theme.gap
            width: page.beside ? page.width / 2 : page.width
            height: Math.max(Theme.itemLarge, Math.min(1.25 * width, page.room))
            out: screen.out
        }
    }

    foot: ActionFoot {
        text: screen.over ? qsTr("Go on") : qsTr("Stop here")
        onClicked: screen.done()
    }
}
