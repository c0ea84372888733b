pragma ComponentBehavior: Bound

import QtQuick

/// A column of the sheet that runs over its margins to both edges.
Item {
    id: bleed

    default property alias contents: column.data
    required property real sheetMargin
    required property real sheetWidth

    width: bleed.sheetWidth - 2 * bleed.sheetMargin
    height: column.height

    Column {
        id: column

        x: -bleed.sheetMargin
        width: bleed.sheetWidth
    }
}
