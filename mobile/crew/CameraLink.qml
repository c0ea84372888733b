pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Camera
import Lidlark.Design

/// Offers the camera where there is one. Named by its file alone, so that Lidlark.Camera is loaded
/// after the page has come, and the page comes without it.
Item {
    id: offer

    property bool there: cameras.any

    signal asked()

    objectName: "cameraOffer"
    implicitHeight: offer.there ? link.height : 0

    Cameras { id: cameras }

    StitchedLink {
        id: link

        anchors.left: parent.left
        visible: offer.there
        text: qsTr("Read the squares with the camera")
        onClicked: offer.asked()
    }
}
