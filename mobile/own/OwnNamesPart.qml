pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// What it is called, and which of our pictures stands for it.
Column {
    id: part

    required property OwnItemViewModel writing
    property bool choosing: false

    spacing: Theme.gap

    PaperField {
        id: name

        objectName: "thingName"
        width: part.width
        label: qsTr("What they are called")
        placeholder: qsTr("wooden bobbins")
        maximumLength: 60
        onEdited: part.writing.name = name.text
        Component.onCompleted: name.text = part.writing.name
    }

    PaperField {
        id: one

        objectName: "thingOne"
        width: part.width
        label: qsTr("One of them")
        placeholder: qsTr("wooden bobbin")
        maximumLength: 60
        onEdited: part.writing.one = one.text
        Component.onCompleted: one.text = part.writing.one
    }

    PicturedWords {
        drawing: part.writing.drawing
        text: qsTr("Its picture")
        note: qsTr("One of ours that comes close.")
    }

    PaperButton {
        objectName: "choosePicture"
        anchors.left: parent.left
        width: Math.min(implicitWidth, part.width)
        text: part.choosing ? qsTr("Close the list") : qsTr("Choose another picture")
        onClicked: part.choosing = !part.choosing
    }

    PaperField {
        id: find

        objectName: "findPicture"
        width: part.width
        visible: part.choosing
        label: qsTr("Find it by its name")
    }

    Repeater {
        model: part.choosing ? part.writing.pictures(find.text) : []

        LinkRow {
            id: picture

            required property string modelData

            objectName: "picture-" + picture.modelData
            width: part.width
            drawing: part.writing.drawingOf(picture.modelData)
            text: part.writing.nameOf(picture.modelData)
            accessibleName: qsTr("The picture of: %1").arg(picture.text)
            onClicked: {
                part.choosing = false
                part.writing.draw(picture.modelData)
            }
        }
    }
}
