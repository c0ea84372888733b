pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// What was just noted, below the page that is looked at next, with its way back. The page makes
/// room for it, so it covers nothing. It stays until the next tap elsewhere, or the page after that.
Item {
    id: slip

    required property Household household
    /// Pages for adults on which there is room for it.
    property bool adultPage: false
    readonly property bool shown: slip.adultPage && just.text.length > 0
    readonly property int serial: just.serial
    property int moves: 0
    property int serialAtTap: 0
    property bool tappedHere: false

    /// What was noted counts no more, or counts again.
    signal secondThought()
    signal failed(string problem)

    /// Another page was gone to: the first shows what was noted, the next no more.
    function pageTurned() {
        slip.moves += 1
        if (slip.moves > 1)
            just.putAway()
    }

    /// A tap that is not on the slip puts it away, unless it noted something itself.
    /// @param at on the slip's own ground.
    function tapBegan(at: point) {
        slip.serialAtTap = slip.serial
        slip.tappedHere = slip.shown && slip.contains(at)
    }

    function tapEnded() {
        if (!slip.tappedHere && slip.serialAtTap === slip.serial)
            just.putAway()
    }

    onSerialChanged: slip.moves = 0
    implicitHeight: content.height + 2 * Theme.smallGap
    height: slip.shown ? slip.implicitHeight : 0
    visible: slip.shown

    JustNoted {
        id: just

        household: slip.household
        onFailed: problem => slip.failed(problem)
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Rule {
        width: slip.width
    }

    // All of it, unless it would leave nothing of a low page.
    Words {
        id: full

        readonly property bool fits: implicitHeight <= (slip.parent?.height ?? 0) / 8

        visible: false
        width: words.width
        role: Theme.Label
        text: just.takenBack ? qsTr("Taken back: %1").arg(just.text) : just.text
    }

    Flow {
        id: content

        readonly property bool beside: !Theme.largeText && way.implicitWidth < content.width / 2

        x: Theme.margin
        y: Theme.smallGap
        width: slip.width - 2 * Theme.margin
        spacing: Theme.gap

        Words {
            id: words

            objectName: "justNotedWords"
            width: content.beside ? content.width - way.width - content.spacing : content.width
            height: content.beside ? Math.max(implicitHeight, way.height) : implicitHeight
            verticalAlignment: Text.AlignVCenter
            role: Theme.Label
            text: !full.fits ? (just.takenBack ? qsTr("Taken back") : qsTr("Noted")) : full.text
            Accessible.name: full.text
        }

        StitchedLink {
            id: way

            objectName: "justNotedWay"
            width: Math.min(implicitWidth, content.width)
            text: just.takenBack ? qsTr("Put it in again") : qsTr("Take back")
            accessibleName: just.takenBack ? qsTr("Put it in again: %1").arg(just.text) : qsTr("Take back: %1").arg(just.text)
            onClicked: {
                slip.moves = 0
                if (just.takenBack ? just.putInAgain() : just.takeBack())
                    slip.secondThought()
            }
        }
    }
}
