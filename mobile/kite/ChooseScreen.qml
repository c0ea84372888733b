pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// The child chooses between the offers' pictures. No words in them; the last tap counts, and an
/// adult goes on from there by holding. Where the phone has a voice, the speaker reads what each
/// picture invites to, and a long touch on a picture reads that one.
FocusScope {
    id: screen

    /// Rows with activityId, drawing, drawingAlt and invite.
    required property QtObject offers
    required property Voice voice
    property string picked: ""
    readonly property int longTouchMs: 800
    readonly property bool wide: screen.width > screen.height
    readonly property real side: Theme.childMargin
    readonly property real between: Math.min(Theme.childGap, Theme.sectionGap)
    readonly property real footRoom: heldControl.height + 2 * Theme.gap
    readonly property real tileWidth: screen.wide ? (screen.width - 2 * screen.side - (choices.count - 1) * screen.between) / Math.max(1, choices.count)
                                                  : screen.width - 2 * screen.side
    readonly property real tileHeight: screen.wide ? screen.height - screen.footRoom - 2 * screen.side
        : Math.floor((screen.height - screen.footRoom - screen.side - (choices.count - 1) * screen.between) / Math.max(1, choices.count))

    /// An adult begins what the child picked.
    signal chosen(string activityId)
    /// An adult goes back; nothing was picked.
    signal skipped()

    function leave() {
        if (screen.picked.length > 0)
            screen.chosen(screen.picked)
        else
            screen.skipped()
    }

    function readAll() {
        let lines = [words.text]
        for (let i = 0; i < choices.count; ++i)
            lines.push((choices.itemAt(i) as OfferTile)?.invite ?? "")
        screen.voice.read(lines)
    }

    Component.onDestruction: screen.voice.stop()
    Keys.onEscapePressed: {}
    Keys.onBackPressed: {}

    // The second of two touches within 600 ms is ignored, as on the kite's screen.
    Timer {
        id: pause

        interval: 600
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Repeater {
        id: choices

        model: screen.offers

        OfferTile {
            id: tile

            objectName: "choice-" + tile.activityId
            x: screen.side + (screen.wide ? tile.index * (screen.tileWidth + screen.between) : 0)
            y: screen.side + (screen.wide ? 0 : tile.index * (screen.tileHeight + screen.between))
            width: screen.tileWidth
            height: screen.tileHeight
            picked: screen.picked === tile.activityId
            longTouchMs: screen.voice.available ? screen.longTouchMs : 0
            onLingered: screen.voice.say(tile.invite)
            onChosen: {
                if (pause.running)
                    return
                pause.restart()
                screen.picked = tile.activityId
            }
        }
    }

    FittingHeading {
        id: words

        objectName: "chooseWords"
        // In large letters there is no room for them beside the speaker, which says them.
        visible: !(Theme.largeText && speaker.visible)
        anchors.left: Theme.leftHanded ? heldControl.right : parent.left
        anchors.leftMargin: Theme.leftHanded ? Theme.gap : Theme.margin + 2
        anchors.right: speaker.visible ? speaker.left : Theme.leftHanded ? parent.right : heldControl.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: heldControl.verticalCenter
        roles: Theme.largeText ? [Theme.TabWord] : [Theme.Label, Theme.Reason, Theme.Caption]
        mostHeight: screen.footRoom
        text: qsTr("You choose. We play together.")
    }

    SpeechButton {
        id: speaker

        objectName: "readInvites"
        paper: true
        anchors.right: Theme.leftHanded ? parent.right : heldControl.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: heldControl.verticalCenter
        visible: screen.voice.available
        speaking: screen.voice.speaking
        accessibleName: qsTr("Read aloud")
        onClicked: screen.readAll()
    }

    CornerHold {
        id: heldControl

        objectName: "adultHold"
        side: screen.side
        width: Math.max(implicitWidth, Theme.largeText ? Theme.itemLarge : 0)
        low: Theme.largeText
        text: Theme.largeText ? qsTr("hold") : Accessible.name
        Accessible.name: screen.picked.length > 0 ? qsTr("adult: hold to begin") : qsTr("adult: hold")
        onHeld: screen.leave()
    }
}
