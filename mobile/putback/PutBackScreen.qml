pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.PutBack

/// The last part of the play: the child's tray above, the adult's one large yes on the cloth.
Sheet {
    id: screen

    required property Household household
    required property PlayInHand playInHand
    required property Appearance appearance
    required property Voice voice
    property bool lidOn: false

    signal playWanted()
    signal differentWanted()
    signal emergencyWanted()
    signal otherChildWanted()
    signal done(string activityId)

    margin: Theme.childMargin

    PutBackViewModel {
        id: putBack

        household: screen.household
        playInHand: screen.playInHand
        voice: screen.appearance.countAloud ? screen.voice : null
    }

    Component.onDestruction: screen.voice.stop()

    header: ScreenTitle {
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        text: putBack.count > 0 ? qsTr("Everything home") : qsTr("Clear up together")
        // On a phone lying down the tray needs the room.
        under: putBack.count > 0 && !Theme.lowPage && screen.height > 55 * Theme.dotsPerMm * Theme.textScale
            ? Theme.largeText ? qsTr("All back in the box?") : qsTr("Tap each one as it comes back.") : ""
    }

    FullBleed {
        visible: reach.lead.length > 0
        sheetMargin: screen.margin
        sheetWidth: screen.width

        CautionStrip {
            id: reach

            width: parent.width
            lead: screen.playInHand.outOfReach
        }
    }

    Tray {
        width: screen.contentWidth
        visible: putBack.count > 0
        lined: true

        WellRow {
            columns: putBack.count > 3 && !Theme.lowPage ? 2 : 0
            spacing: Theme.cardPadding

            Repeater {
                model: putBack

                HomeWell {
                    id: well

                    required property string itemId
                    required property string name
                    required property string countText
                    required property int index
                    required drawing
                    required property int due
                    required home

                    objectName: "well-" + well.itemId
                    enabled: well.due > 0
                    expected: well.due
                    // Of a well that stays empty no picture says whose it is.
                    text: well.due > 0 ? well.countText : well.name + ": " + well.countText
                    accessibleName: qsTr("%1: %2 home").arg(well.name).arg(well.countText)
                    pieceDrawings: well.itemId === "eyes" ? ["eye-home0", "eye-home1", "eye-home2", "eye-home3"] : []
                    placeDrawing: well.itemId === "eyes" ? "eye-place" : ""
                    onClicked: putBack.tap(well.index)
                }
            }
        }

        LidWell {
            objectName: "lid"
            text: qsTr("Lid, last of all")
            accessibleName: screen.lidOn ? qsTr("The lid is on") : text
            home: screen.lidOn
            onClicked: screen.lidOn = !screen.lidOn
        }
    }

    PutBackLines {
        width: screen.contentWidth
        lines: putBack.putBackLines
        readable: screen.voice.available
        speaking: screen.voice.speaking
        onReadWanted: screen.voice.read(putBack.putBackLines)
    }

    LinkPair {
        objectName: "playMore"
        width: screen.contentWidth
        text: qsTr("Back to the play")
        otherText: qsTr("Something is wrong")
        onClicked: screen.playWanted()
        onOtherClicked: screen.emergencyWanted()
    }

    StitchedLink {
        objectName: "otherChild"
        visible: screen.household.several
        text: qsTr("Another child's box")
        onClicked: screen.otherChildWanted()
    }

    foot: YesFoot {
        question: putBack.count > 0 ? qsTr("All back in the box?") : ""
        answer: putBack.count > 0 ? qsTr("Yes, all back") : qsTr("Done")
        notNowReason: screen.playInHand.countFirst
        otherText: putBack.count > 0 ? qsTr("Something's different") : ""
        onClicked: {
            const activityId = screen.playInHand.activityId
            if (screen.playInHand.allBack())
                screen.done(activityId)
        }
        onOtherClicked: screen.differentWanted()
    }
}
