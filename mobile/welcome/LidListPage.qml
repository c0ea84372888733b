pragma ComponentBehavior: Bound

import QtQuick
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

    Repeater {
        model: page.answers

        LidListRow {
            id: item

            required property string itemId
            required property int index

            objectName: "item-" + item.itemId
            width: page.width
            onSaid: pieces => page.answers.setPieces(item.index, pieces)
        }
    }
}
