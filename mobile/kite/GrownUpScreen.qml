pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// "I need a grown-up": answered by people, not by activities. Still a child's view, so it is left
/// by the held control.
FocusScope {
    id: screen

    required property string childName
    readonly property bool wide: screen.width > screen.height

    signal done()

    Keys.onEscapePressed: {}
    Keys.onBackPressed: {}

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Flickable {
        id: scroller

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: heldControl.top
        anchors.bottomMargin: Theme.gap
        contentHeight: words.y + words.height
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height
        clip: interactive

        Column {
            id: words

            x: Theme.margin + 2
            y: Theme.sectionGap
            width: scroller.width - 2 * words.x
            spacing: Theme.sectionGap

            Drawing {
                anchors.horizontalCenter: parent.horizontalCenter
                width: Math.min(words.width, screen.wide ? Theme.itemLarge : (Theme.largeText ? 14 : 30) * Theme.dotsPerMm)
                height: width
                name: "hand"
                inkColour: Theme.ink
                alt: qsTr("An open hand")
            }

            Words {
                objectName: "needs"
                width: parent.width
                role: Theme.Title
                text: qsTr("%1 needs a grown-up").arg(screen.childName)
            }

            Words {
                width: parent.width
                role: Theme.largeText ? Theme.Body : Theme.Step
                text: qsTr("Hurt, toilet, thirsty, hungry, scared, or no? Play can wait.")
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "New or unusual drowsiness, a change after a knock to the head, a seizure, trouble breathing, or pain that stops play: get medical help."))
            }
        }
    }

    CornerHold {
        id: heldControl

        objectName: "adultHold"
        focus: true
        width: Math.max(implicitWidth, Theme.largeText ? Theme.itemLarge : 0)
        text: qsTr("adult: hold")
        onHeld: screen.done()
    }
}
