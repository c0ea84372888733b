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
    required property Voice voice

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

    AppScreens {
        id: screens

        objectName: "screens"
        anchors.fill: parent
        focus: true
        household: window.household
        sitting: window.sitting
        playInHand: window.playInHand
        appearance: window.appearance
        voice: window.voice
    }

    // Above everything, so that it sees each touch; it takes none away from what lies under it.
    Item {
        anchors.fill: parent
        z: 1

        // After whatever the touch itself does.
        Timer {
            id: lifted

            interval: 0
            onTriggered: {
                window.voice.touchEnded()
                if (!touch.dragged)
                    screens.tapEnded()
            }
        }

        PointHandler {
            id: touch

            /// Who scrolls on to read does not tap.
            property bool dragged: false

            acceptedButtons: Qt.LeftButton
            onPointChanged: {
                const way = touch.point.position.y - touch.point.pressPosition.y
                touch.dragged = touch.dragged || (touch.active && Math.abs(way) > Application.styleHints.startDragDistance)
            }
            onActiveChanged: {
                if (touch.active) {
                    touch.dragged = false
                    screens.tapBegan(touch.point.position)
                    window.voice.touchBegan()
                } else {
                    lifted.restart()
                }
            }
        }
    }
}
