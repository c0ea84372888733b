pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The head of a screen: a soft line over the title, one under it, and room for something at its end.
Item {
    id: title

    default property alias trailing: end.data
    property string text: ""
    property string over: ""
    property string under: ""
    property string endNote: ""
    readonly property real leftBeside: title.width - end.width - Theme.gap
    readonly property bool stacked: end.width > 0 && (Theme.largeText || title.leftBeside < title.width * 0.45)

    width: parent ? parent.width : implicitWidth
    implicitWidth: words.implicitWidth
    implicitHeight: title.stacked ? words.height + end.height + Theme.smallGap
                                  : Math.max(words.height, end.height > 0 ? end.y + end.height : 0)

    Column {
        id: words

        anchors.left: parent.left
        anchors.leftMargin: 2
        topPadding: (title.over.length > 0 ? 15 : 19) - Theme.scriptRoom
        bottomPadding: title.over.length > 0 ? 2 : 6
        spacing: Math.max(-Theme.scriptRoom, (title.over.length > 0 ? 8 : title.endNote.length > 0 ? 0 : 4) - 2 * Theme.scriptRoom)
        width: title.stacked || end.width === 0 ? title.width - 4 : title.leftBeside

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            visible: title.over.length > 0
            text: title.over
        }

        Words {
            width: parent.width
            role: Theme.largeText ? Theme.Heading : Theme.Title
            heading: true
            text: title.text
        }

        EndedLine {
            width: parent.width
            visible: title.under.length > 0 || title.endNote.length > 0
            text: title.under
            endText: title.endNote
        }
    }

    Item {
        id: end

        anchors.right: parent.right
        y: title.stacked ? words.height : 12 - Theme.scriptRoom
        width: childrenRect.width
        height: childrenRect.height
    }
}
