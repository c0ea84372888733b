pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One line of the lid list: the thing, its name, how many.
Item {
    id: row

    required property string name
    required property string drawing
    required property int pieces
    readonly property int pictureSide: Theme.largeText ? 0 : Theme.itemSmall

    signal said(int pieces)

    implicitHeight: Math.max(stepper.implicitHeight, row.pictureSide + 2 * Theme.smallGap)

    Rectangle {
        id: ground

        anchors.left: parent.left
        anchors.verticalCenter: parent.verticalCenter
        width: row.pictureSide + (row.pictureSide > 0 ? 2 * Theme.smallGap : 0)
        height: width
        radius: Theme.radiusWell
        color: Theme.picture
        visible: row.pictureSide > 0

        Drawing {
            anchors.centerIn: parent
            width: row.pictureSide
            height: row.pictureSide
            name: row.drawing
        }
    }

    Stepper {
        id: stepper

        anchors.left: ground.right
        anchors.leftMargin: row.pictureSide > 0 ? Theme.gap : 0
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: row.name
        value: row.pieces
        from: 0
        lessName: qsTr("One less: %1").arg(row.name)
        moreName: qsTr("One more: %1").arg(row.name)
        onChanged: value => row.said(value)
    }
}
