pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// How old, in whole years: one tap on a key. A second tap takes it back.
Column {
    id: ages

    required property string text
    required property int years
    required property int oldest

    signal said(int years)

    spacing: Theme.smallGap

    Words {
        width: ages.width
        role: Theme.Label
        text: ages.text
    }

    ChipFlow {
        width: ages.width

        Repeater {
            model: ages.oldest + 1

            NumberKey {
                id: key

                required property int index

                objectName: "years-" + key.index
                text: key.index === 0 ? qsTr("under 1") : key.index < ages.oldest ? Numerals.of(key.index)
                                                        : qsTr("%1 or more").arg(Numerals.of(key.index))
                accessibleName: qsTr("%1: age in years").arg(key.text)
                picked: ages.years === key.index
                onClicked: ages.said(key.picked ? -1 : key.index)
            }
        }
    }
}
