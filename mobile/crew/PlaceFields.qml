pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// An address, and what lets one in there.
Column {
    id: place

    required property string address
    required property string user
    required property string password
    /// Over a network a name and a password are asked for.
    readonly property bool folder: place.address.startsWith("/")

    signal addressEdited(string text)
    signal userEdited(string text)
    signal passwordEdited(string text)

    spacing: Theme.gap

    PaperField {
        objectName: "placeAddress"
        width: place.width
        label: qsTr("Address of the place")
        placeholder: qsTr("https://example.org/dav/crew")
        inputMethodHints: Qt.ImhUrlCharactersOnly | Qt.ImhNoAutoUppercase
        text: place.address
        onEdited: place.addressEdited(text)
    }

    Words {
        width: place.width
        text: qsTr("A folder that all your phones reach: on your server (WebDAV), or one that another program keeps alike. What lies there is sealed.")
    }

    PaperField {
        objectName: "placeUser"
        width: place.width
        visible: !place.folder
        label: qsTr("Name there, if it asks for one")
        inputMethodHints: Qt.ImhNoAutoUppercase | Qt.ImhNoPredictiveText
        text: place.user
        onEdited: place.userEdited(text)
    }

    PaperField {
        objectName: "placePassword"
        width: place.width
        visible: !place.folder
        label: qsTr("Password there")
        echoMode: shown.checked ? TextInput.Normal : TextInput.Password
        inputMethodHints: Qt.ImhHiddenText | Qt.ImhNoAutoUppercase | Qt.ImhNoPredictiveText
        text: place.password
        onEdited: place.passwordEdited(text)
    }

    ChoiceRow {
        id: shown

        width: place.width
        visible: !place.folder
        text: qsTr("Show the password")
        // Shown at first: a hidden one has no name for a screen reader (seen with Qt 6.4.2).
        checked: true
    }
}
