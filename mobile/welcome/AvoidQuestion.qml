pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One question with three answers of equal weight.
Column {
    id: question

    required property string question
    required property string note
    required property int answer

    signal said(int answer)

    spacing: Theme.smallGap

    Words {
        width: question.width
        role: Theme.Label
        text: question.question
    }

    Words {
        width: question.width
        role: Theme.Reason
        soft: true
        text: question.note
    }

    ChipFlow {
        width: question.width

        Repeater {
            model: [qsTr("Don't know"), qsTr("Yes"), qsTr("No")]

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                objectName: question.objectName + "-" + chip.index
                text: chip.modelData
                accessibleName: qsTr("%1 %2").arg(question.question).arg(chip.modelData)
                picked: question.answer === chip.index
                onClicked: question.said(chip.index)
            }
        }
    }
}
