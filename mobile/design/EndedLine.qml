pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A soft line with a second one at its end, or below it when there is no room for both.
Item {
    id: line

    property string text: ""
    property string endText: ""
    readonly property bool fits: start.implicitWidth + end.implicitWidth + Theme.gap <= line.width

    implicitWidth: start.implicitWidth + Theme.gap + end.implicitWidth
    implicitHeight: line.fits || line.endText.length === 0 ? start.height : start.height + end.height

    Words {
        id: start

        anchors.left: parent.left
        width: Math.min(implicitWidth, line.width)
        role: Theme.Reason
        soft: true
        text: line.text
    }

    Words {
        id: end

        x: line.fits !== line.LayoutMirroring.enabled ? line.width - width : 0
        anchors.bottom: parent.bottom
        width: Math.min(implicitWidth, line.width)
        role: Theme.Reason
        soft: true
        visible: text.length > 0
        text: line.endText
    }
}
