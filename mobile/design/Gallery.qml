pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Every component in its states, on one scrolling screen. A tool for developers: its words are
/// never shown to a family, so they are not translated.
Sheet {
    id: gallery

    spacing: Theme.sectionGap
    header: TitleBar {
        text: "Gallery"
        backName: "Back"

        SpeechButton { accessibleName: "Read aloud" }
    }

    GalleryHeads {}
    GalleryRows {}
    GalleryButtons {}
    GalleryCautions {}
    GalleryChild {}
    GalleryTray {}
    GalleryBox {}
    GalleryCloths {}

    foot: TabFoot {
        Tab {
            text: "Today"
            sign: "sign-today"
            current: true
        }

        Tab {
            text: "Box"
            sign: "sign-box"
        }

        Tab {
            text: "Notebook"
            sign: "sign-notebook"
        }
    }
}
