pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// What the crew shares as one sealed file: to be handed over, or taken in.
Sheet {
    id: screen

    required property CrewLife crewLife

    signal back()

    news: handed.written + handed.taken

    HandedFile {
        id: handed

        objectName: "handedFile"
        crew: screen.crewLife
    }

    header: TitleBar {
        text: qsTr("Hand over a file")
        backName: qsTr("Back to the crew")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        text: qsTr("A file holds all that the crew shares, sealed. Give it to somebody of the crew on a stick, or send it from phone to phone.")
    }

    PaperButton {
        objectName: "writeFile"
        width: screen.contentWidth
        patch: true
        text: qsTr("Make a file")
        notNowReason: handed.busy ? qsTr("One moment.") : ""
        onClicked: handed.write()
    }

    Words {
        objectName: "fileWritten"
        width: screen.contentWidth
        visible: text.length > 0
        text: handed.written
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("A file that somebody has given you")
    }

    PaperField {
        id: file

        objectName: "fileToTakeIn"
        width: screen.contentWidth
        label: qsTr("Where it lies on this phone")
        placeholder: qsTr("/home/ruth/Documents/lidlark-crew.bundle")
        onAccepted: handed.takeIn(file.text)
    }

    PaperButton {
        objectName: "takeFileIn"
        width: screen.contentWidth
        text: qsTr("Open it")
        notNowReason: handed.busy ? qsTr("One moment.") : file.text.trim().length === 0 ? qsTr("Where it lies first.") : ""
        onClicked: handed.takeIn(file.text)
    }

    Words {
        objectName: "fileTaken"
        width: screen.contentWidth
        visible: text.length > 0
        text: handed.taken
    }
}
