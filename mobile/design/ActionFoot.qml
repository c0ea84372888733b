pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The cloth with one action on a slip, and a quieter one beside it (below it in large text).
ClothFoot {
    id: foot

    property string text: ""
    property string sign: ""
    property string notNowReason: ""
    property string otherText: ""
    readonly property bool stacked: Theme.largeText || after.implicitWidth > foot.width * 0.4
    readonly property bool swapped: Theme.leftHanded !== pair.LayoutMirroring.enabled

    signal clicked()
    signal otherClicked()

    component OtherLink: StitchedLink {
        x: foot.stacked ? (pair.width - width) / 2
         : foot.swapped ? 0 : pair.width - width
        y: foot.stacked ? slip.height + Theme.smallGap : (slip.height - height) / 2
        width: Math.min(implicitWidth, pair.width)
        centred: foot.stacked
        ground: Theme.OnCloth
        text: foot.otherText
        onClicked: foot.otherClicked()
    }

    Item {
        id: pair

        readonly property real otherRoom: foot.otherText.length > 0 && !foot.stacked
                                          ? after.implicitWidth + 2 * Theme.cardPadding : 0

        width: parent.width
        implicitHeight: slip.implicitHeight
                        + (foot.stacked && foot.otherText.length > 0 ? after.implicitHeight + Theme.smallGap : 0)

        // In the left hand it stands before the slip, and is met before it.
        OtherLink {
            visible: foot.otherText.length > 0 && Theme.leftHanded && !foot.stacked
        }

        Slip {
            id: slip

            x: foot.stacked || !foot.swapped ? 0 : pair.otherRoom
            width: pair.width - pair.otherRoom
            text: foot.text
            sign: foot.sign
            notNowReason: foot.notNowReason
            onClicked: foot.clicked()
        }

        OtherLink {
            id: after

            visible: foot.otherText.length > 0 && !(Theme.leftHanded && !foot.stacked)
        }
    }
}
