pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One offer as a child sees it: its picture, and what it invites to for whoever listens.
ChildTile {
    id: tile

    required property string activityId
    required property string drawingAlt
    required property string invite
    required property int index
    required drawing

    accessibleName: tile.invite + " " + tile.drawingAlt
}
