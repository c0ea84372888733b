pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// The step in hand: its picture from edge to edge, what is laid in it, how far along, its words. On
/// a phone lying down the picture stands beside the words.
Item {
    id: page

    default property alias beforeWords: before.data
    required property real margin
    required property real room
    /// How far up the picture lies, to meet the caution strip without a gap.
    required property real lift
    required property string drawing
    required property string drawingAlt
    required property int step
    required property int stepCount
    required property string text
    /// There is a voice, and it is reading.
    property bool readable: false
    property bool speaking: false
    readonly property bool beside: page.width > 480 && page.width > 1.5 * page.room
    readonly property bool mirrored: LayoutMirroring.enabled
    readonly property int mostPicture: 222
    /// A hand and what it holds can be told apart; under large words as well (look.md 5: no item
    /// under 52 px, and a scene holds four of them).
    readonly property int leastPicture: Theme.largeText ? 150 : 120
    readonly property real pictureWidth: page.beside ? page.width * 0.4 + page.margin : page.width + 2 * page.margin
    /// The step marks and four lines, so that a step is read before anything is scrolled.
    readonly property real roomForWords: 48 + before.height + 4 * Theme.lineHeight(Theme.Step, Theme.textScale, Theme.arabicScript)
    readonly property real roomForPicture: page.beside ? page.room : page.room - page.roomForWords

    readonly property real gap: speaker.visible && before.height === 0 ? 0 : Theme.gap

    signal readWanted()

    implicitHeight: page.beside ? Math.max(ground.height - page.lift, words.height) : ground.height - page.lift + page.gap + words.height

    PictureGround {
        id: ground

        x: page.beside && page.mirrored ? page.width + page.margin - width : -page.margin
        y: -page.lift
        width: page.pictureWidth
        height: Math.max(page.leastPicture, Math.min(page.mostPicture, page.roomForPicture))

        Drawing {
            objectName: "picture"
            anchors.fill: parent
            name: page.drawing
            alt: page.drawingAlt
        }
    }

    // It stands beside the marks: a row of its own would push the words off a small screen.
    SpeechButton {
        id: speaker

        objectName: "readStep"
        anchors.right: words.right
        y: words.y + markRow.y
        visible: page.readable
        speaking: page.speaking
        accessibleName: qsTr("Read this step aloud")
        onClicked: page.readWanted()
    }

    Column {
        id: words

        x: page.beside && !page.mirrored ? ground.width - page.margin + Theme.gap : 0
        y: page.beside ? 0 : ground.height - page.lift + page.gap
        width: page.beside ? page.width + page.margin - ground.width - Theme.gap : page.width
        spacing: speaker.visible ? Theme.smallGap : Theme.gap

        Column {
            id: before

            width: words.width
        }

        Item {
            id: markRow

            width: words.width
            height: speaker.visible ? speaker.height : marks.height

            StepMarks {
                id: marks

                anchors.verticalCenter: parent.verticalCenter
                width: parent.width
                count: page.stepCount
                current: page.step
                text: qsTr("Step %1 of %2").arg(Numerals.of(page.step + 1)).arg(Numerals.of(page.stepCount))
            }
        }

        Words {
            objectName: "stepText"
            width: words.width
            role: Theme.Step
            text: page.text
        }
    }
}
