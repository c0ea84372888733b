pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A piece of paper on the page with something to read on it.
Item {
    id: card

    default property alias contents: column.data
    property alias spacing: column.spacing
    property int padding: Theme.cardPadding + 2

    implicitWidth: column.implicitWidth + 2 * card.padding
    implicitHeight: column.implicitHeight + 2 * card.padding

    PaperEdge { anchors.fill: parent }

    Column {
        id: column

        x: card.padding
        y: card.padding
        width: card.width - 2 * card.padding
        spacing: Theme.smallGap
    }
}
