pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Which key moves the ring on: pressed, it waits for that key. Escape leaves it as it was.
LinkRow {
    id: row

    required property string keyName
    /// The next key comes here, whatever it would do elsewhere.
    property bool takesKeys: false

    signal learnt(int key)

    text: qsTr("The key that moves the ring on")
    note: row.takesKeys ? qsTr("Press that switch now.") : ""
    endText: row.takesKeys ? "" : row.keyName.length > 0 ? row.keyName : qsTr("Tab or Right")
    onClicked: {
        row.forceActiveFocus()
        row.takesKeys = true
    }
    onActiveFocusChanged: row.takesKeys = row.takesKeys && row.activeFocus
    Keys.priority: Keys.BeforeItem
    Keys.onPressed: event => {
        if (!row.takesKeys)
            return
        event.accepted = true
        row.takesKeys = false
        if (event.key !== Qt.Key_Escape)
            row.learnt(event.key)
    }
}
