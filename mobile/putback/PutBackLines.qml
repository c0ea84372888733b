pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Where each thing goes, in order; the speaker reads them from the first to the last.
Item {
    id: list

    required property list<string> lines
    property bool readable: false
    property bool speaking: false

    signal readWanted()

    visible: list.lines.length > 0
    implicitHeight: Math.max(column.height, speaker.visible ? speaker.height : 0)

    Column {
        id: column

        x: list.LayoutMirroring.enabled ? list.width - width - Theme.smallGap : Theme.smallGap
        width: list.width - 2 * Theme.smallGap - (speaker.visible ? speaker.width : 0)
        spacing: Theme.smallGap

        Repeater {
            model: list.lines

            Words {
                required property string modelData
                required property int index

                Accessible.name: qsTr("%1 of %2. %3").arg(index + 1).arg(list.lines.length).arg(modelData)
                width: column.width
                role: Theme.Body
                soft: true
                text: modelData
            }
        }
    }

    SpeechButton {
        id: speaker

        objectName: "readPutBack"
        anchors.right: list.right
        visible: list.readable
        speaking: list.speaking
        accessibleName: qsTr("Read these lines aloud")
        onClicked: list.readWanted()
    }
}
