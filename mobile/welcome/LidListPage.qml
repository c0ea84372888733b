pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Welcome

/// The list inside the lid, filled with the standard box: change what differs.
Column {
    id: page

    required property WelcomeViewModel answers

    spacing: Theme.gap

    Words {
        width: page.width
        text: qsTr("Compare with the list inside your lid. Change what differs.")
    }

    CautionStrip {
        width: page.width
        visible: page.answers.outOfReach.length > 0
        lead: page.answers.outOfReach
    }

    Repeater {
        model: page.answers

        Stepper {
            id: item

            required property string itemId
            required property string name
            required property int pieces
            required property int index
            required drawing

            objectName: "item-" + item.itemId
            width: page.width
            text: item.name
            value: item.pieces
            valueText: Numerals.of(value)
            lessName: qsTr("One less: %1").arg(item.name)
            moreName: qsTr("One more: %1").arg(item.name)
            onChanged: value => page.answers.setPieces(item.index, value)
        }
    }
}
