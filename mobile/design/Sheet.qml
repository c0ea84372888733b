pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One screen: a sheet of paper whose foot lies on the cloth. The head stays, the middle scrolls
/// and runs on under the teeth of the cloth, the foot stays and takes at most 40 % of the height.
FocusScope {
    id: sheet

    default property alias contents: column.data
    property alias header: head.data
    property alias foot: footHolder.data
    property alias spacing: column.spacing
    property int margin: Theme.margin
    /// Something lies over all of it: nothing below can be reached.
    property bool covered: false
    /// What is written on it is not kept yet: nothing else may take its place by a stray tap.
    property bool unsaved: false
    /// What a screen reader is told as soon as it changes.
    property alias news: said.text
    readonly property real contentWidth: column.width
    readonly property int teeth: 5
    readonly property real footHeight: Math.min(footHolder.childrenRect.height, sheet.height * 0.4)
    /// What the head and the foot leave of the height.
    readonly property real middleHeight: scroller.height - (sheet.footHeight > 0 ? sheet.teeth : 0)
    readonly property Item focused: Window.activeFocusItem
    /// Stays in view while what stands around it grows, until somebody scrolls.
    property Item held: null

    function toTop() {
        scroller.contentY = 0
    }

    function showItem(item: Item) {
        const y = item.mapToItem(scroller.contentItem, 0, 0).y
        const room = scroller.height - sheet.teeth
        const gap = Math.min(Theme.gap, Math.abs(room - item.height))
        if (y < scroller.contentY || item.height > room)
            scroller.contentY = Math.max(0, y - gap)
        else if (y + item.height > scroller.contentY + room)
            scroller.contentY = Math.min(Math.max(0, scroller.contentHeight - scroller.height), y + item.height - room + gap)
    }

    /// On a phone lying down the foot may be cut: it scrolls by itself.
    function showOnCloth(item: Item) {
        const y = item.mapToItem(cloth.contentItem, 0, 0).y
        cloth.contentY = Math.max(0, Math.min(y, cloth.contentHeight - cloth.height))
    }

    function isIn(item: Item, holder: Item): bool {
        for (let above = item; above; above = above.parent) {
            if (above === holder)
                return true
        }
        return false
    }

    onFocusedChanged: {
        if (sheet.isIn(sheet.focused, column))
            sheet.showItem(sheet.focused)
        else if (sheet.isIn(sheet.focused, footHolder))
            sheet.showOnCloth(sheet.focused)
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Said { id: said }

    // Declared first and painted last: the focus meets it before what scrolls under it.
    Rectangle {
        z: 1
        anchors.fill: head
        color: Theme.sheet
    }

    Column {
        id: head

        z: 1
        enabled: !sheet.covered
        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: parent.right
    }

    Flickable {
        id: scroller

        enabled: !sheet.covered
        anchors.top: head.bottom
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: cloth.top
        anchors.bottomMargin: sheet.footHeight > 0 ? -sheet.teeth : 0
        contentHeight: column.y + column.height + Theme.gap + sheet.teeth
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height
        onMovementStarted: sheet.held = null
        onContentHeightChanged: {
            if (sheet.held)
                sheet.showItem(sheet.held)
        }

        Column {
            id: column

            x: sheet.margin
            width: scroller.width - 2 * sheet.margin
            spacing: Theme.gap
        }
    }

    Flickable {
        id: cloth

        enabled: !sheet.covered
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: sheet.footHeight
        contentHeight: footHolder.childrenRect.height
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height
        clip: interactive

        Item {
            id: footHolder

            width: cloth.width
            height: childrenRect.height
        }
    }
}
