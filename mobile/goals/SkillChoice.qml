pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What play a goal is practised by, opened by a tap: the offers for the child go by it.
Column {
    id: choice

    required property list<string> skills
    required property list<string> chosen
    property bool opened: false

    signal skillTapped(int skill)

    spacing: Theme.chipGap

    StitchedLink {
        anchors.left: parent.left
        width: Math.min(implicitWidth, choice.width)
        visible: !choice.opened
        text: choice.chosen.length > 0 ? qsTr("What practises it (%1 chosen)").arg(choice.chosen.length)
                                       : qsTr("What practises it")
        onClicked: choice.opened = true
    }

    SectionWords {
        width: choice.width
        visible: choice.opened
        text: qsTr("What practises it: the offers go by this")
    }

    ChipFlow {
        width: choice.width
        visible: choice.opened

        Repeater {
            model: choice.skills

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                text: chip.modelData
                picked: choice.chosen.includes(chip.modelData)
                onClicked: choice.skillTapped(chip.index)
            }
        }
    }
}
