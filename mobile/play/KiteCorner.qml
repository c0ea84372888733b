pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The kite of a child who would rather not be asked, waiting to be found (checkin.md 6).
Pressable {
    id: corner

    signal found()

    ground: Theme.OnPicture
    paperRadius: Theme.radiusTile
    ringOutset: 2
    accessibleName: qsTr("Show the kite")
    implicitWidth: Theme.itemSmall
    implicitHeight: Theme.touchTarget
    bottomInset: Theme.paperThickness
    bottomPadding: corner.bottomInset
    onClicked: corner.found()

    background: PaperEdge {
        fill: Theme.picture
        radius: Theme.radiusTile
        edgeColour: corner.hovered ? Theme.pictureText : Theme.tileEdge
        edgeWidth: Theme.tileEdgeWidth
        pressedEdge: Theme.pictureText
        pressed: corner.down
    }

    contentItem: Drawing {
        name: "kite"
    }
}
