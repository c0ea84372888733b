pragma ComponentBehavior: Bound

import QtQuick
import QtMultimedia
import Lidlark.Camera

/// What the camera sees, for as long as it is open. Nothing of it is kept.
Item {
    id: eye

    /// The camera is on.
    property bool open: false
    /// It was to be opened, and shows nothing: it is refused, another app has it, or there is none.
    readonly property bool blind: eye.open && eye.failed
    property bool failed: false
    readonly property FramePictures pictures: shown
    /// A camera of the usual kind shows something at once.
    readonly property int patienceMs: 6000

    onOpenChanged: eye.failed = false

    Cameras { id: cameras }

    FramePictures {
        id: shown

        sink: output.videoSink
        onSeeingChanged: {
            if (shown.seeing)
                eye.failed = false // it was only slow
        }
    }

    Camera {
        id: camera

        cameraDevice: cameras.best
        active: eye.open && cameras.any
        onErrorOccurred: eye.failed = true
    }

    CaptureSession {
        camera: camera
        videoOutput: output
    }

    Timer {
        interval: cameras.any ? eye.patienceMs : 0
        running: eye.open && !shown.seeing
        onTriggered: eye.failed = true
    }

    VideoOutput {
        id: output

        objectName: "cameraShows"
        anchors.fill: parent
        fillMode: VideoOutput.PreserveAspectCrop
    }
}
