pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Bridge
import Lidlark.Design

/// The window: one sheet of paper at a time.
PhoneWindow {
    id: window

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand
    required property Appearance appearance
    required property Reminders reminders
    required property Voice voice
    required property CrewLife crewLife

    title: qsTr("Lidlark")

    LayoutMirroring.enabled: Application.layoutDirection === Qt.RightToLeft
    LayoutMirroring.childrenInherit: true

    Binding {
        target: Theme
        property: "textScale"
        value: window.appearance.textScale
    }
    Binding {
        target: Theme
        property: "arabicScript"
        value: window.household.arabicScript
    }
    Binding {
        target: Theme
        property: "scheme"
        value: window.appearance.shownScheme
    }
    Binding {
        target: Theme
        property: "reducedMotion"
        value: window.appearance.still
    }
    Binding {
        target: Theme
        property: "leftHanded"
        value: window.appearance.leftHanded
    }

    Binding {
        target: Theme
        property: "childLeftHanded"
        value: window.sitting.childLeftHanded
    }

    Binding {
        target: Theme
        property: "lowPage"
        value: window.width > window.height && window.height < 65 * Theme.dotsPerMm
    }

    AppScreens {
        id: screens

        objectName: "screens"
        anchors.fill: parent
        focus: true
        household: window.household
        sitting: window.sitting
        playInHand: window.playInHand
        appearance: window.appearance
        reminders: window.reminders
        voice: window.voice
        crewLife: window.crewLife
    }

    SwitchWalk {
        anchors.fill: parent
        screens: screens
        appearance: window.appearance
    }

    // Above everything, so that it sees each touch; it takes none away from what lies under it.
    Item {
        anchors.fill: parent
        z: 1

        // After whatever the touch itself does.
        Timer {
            id: lifted

            interval: 0
            onTriggered: window.voice.touchEnded()
        }

        // A tap, and no drag: who scrolls on to read takes nothing away. (A TapHandler up here would
        // take the tap from the buttons below, Qt 6.4.2.)
        Timer {
            id: tapOver

            interval: 0
            onTriggered: screens.slip.tapEnded()
        }

        PointHandler {
            id: touch

            property bool dragged: false

            acceptedButtons: Qt.LeftButton
            onPointChanged: {
                const way = Qt.vector2d(point.position.x - point.pressPosition.x, point.position.y - point.pressPosition.y)
                if (touch.active && way.length() > Application.styleHints.startDragDistance)
                    touch.dragged = true
            }
            onActiveChanged: {
                if (active) {
                    touch.dragged = false
                    window.voice.touchBegan()
                    screens.slip.tapBegan(screens.slip.mapFromItem(screens, point.position))
                    return
                }
                lifted.restart()
                if (!touch.dragged)
                    tapOver.restart()
            }
        }
    }
}
