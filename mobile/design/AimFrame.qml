pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A frame to aim with, over a picture of any colour: a line of ink beside a line of paper.
Item {
    id: aim

    Rectangle {
        anchors.fill: parent
        radius: Theme.radiusPaper
        color: "transparent"
        border.color: Theme.drawingInk
        border.width: 6
    }

    Rectangle {
        anchors.fill: parent
        anchors.margins: 2
        radius: Theme.radiusPaper - 2
        color: "transparent"
        border.color: Theme.drawingPaper
        border.width: 2
    }
}
