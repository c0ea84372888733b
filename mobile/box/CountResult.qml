pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// After a count: what differs from what was expected, and nothing about anybody.
Column {
    id: result

    required property list<string> differences
    required property bool floorNote

    signal floorCheckWanted()

    spacing: Theme.gap

    CautionButton {
        objectName: "countFloor"
        width: result.width
        visible: result.floorNote
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "A small piece may lie on the floor. Look now."))
        onClicked: result.floorCheckWanted()
    }

    Words {
        width: result.width
        role: Theme.Heading
        heading: true
        text: result.differences.length > 0 ? qsTr("What differs") : qsTr("All as expected")
    }

    Repeater {
        model: result.differences

        Card {
            id: card

            required property string modelData

            width: result.width

            Words {
                width: parent.width
                text: card.modelData
            }
        }
    }

    Words {
        width: result.width
        role: Theme.Reason
        soft: true
        text: qsTr("The count holds from now on, on every phone that shares the box.")
    }
}
