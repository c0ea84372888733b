pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: what a child presses.
Column {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.childGap

    ChildTile {
        width: parent.width
        height: Theme.mm(20)
        drawing: "kite-resting"
        text: "Resting"
        note: "slow, floppy, or just quiet"
    }

    ChildTile {
        width: parent.width
        height: Theme.mm(20)
        drawing: "kite-whirling"
        text: "Tugging and whirling"
        shortText: "Whirling"
        note: "wiggly, fizzy, fast"
        picked: true
    }

    EvenGrid {
        width: parent.width
        spacing: Theme.childGap
        mirrored: LayoutMirroring.enabled

        ChildTile {
            implicitHeight: Theme.mm(20)
            upright: true
            drawing: "kite-clouds"
            text: "Clouds"
        }

        ChildTile {
            implicitHeight: Theme.mm(20)
            upright: true
            drawing: "kite-bag"
            text: "In the bag"
        }
    }

    ChildTile {
        width: parent.width
        height: Theme.mm(31)
        drawing: "scene-harbour"
        accessibleName: "Hidden Harbour Lights"
    }

    Row {
        spacing: Theme.childGap

        HeldAdultControl { text: "adult: hold" }

        HeldAdultControl {
            beside: true
            text: "adult: hold"
        }
    }
}
