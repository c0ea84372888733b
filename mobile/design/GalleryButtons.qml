pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: buttons, chips and links in their states.
Column {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    ChipFlow {
        FilterChip { text: "No table" }

        FilterChip {
            text: "Quiet"
            picked: true
        }

        FilterChip { text: "Someone is ill" }

        FilterChip {
            text: "Outside"
            notNowReason: "after dark"
        }
    }

    Pair {
        PaperButton {
            text: "Play"
            patch: true
        }

        PaperButton { text: "Not this one" }
    }

    Pair {
        PaperButton {
            text: "With a sign"
            sign: "sign-box"
        }

        PaperButton {
            text: "Play"
            notNowReason: "Dough is drying"
        }
    }

    Pair {
        GradeCard {
            sign: "sign-easier"
            text: "Easier"
            note: "Three lights, near the top"
        }

        GradeCard {
            sign: "sign-harder"
            text: "Harder"
            note: "Six lights, pushed in deep"
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.gap

        NumberKey { text: "1" }

        NumberKey {
            text: "2"
            picked: true
        }

        SignButton {
            sign: "sign-back"
            otherWaySign: "sign-on"
            accessibleName: "Back"
        }

        SpeechButton {
            accessibleName: "Stop reading"
            speaking: true
        }

        SpeechButton {
            accessibleName: "Read aloud"
            paper: true
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.gap

        CountChip { text: "6" }

        CountChip {
            text: "1"
            look: CountChip.NeedsLook
            tag: "low"
        }

        CountChip {
            text: "4 or 5"
            look: CountChip.NeedsLook
            tag: "which?"
        }

        CountChip {
            text: "none"
            look: CountChip.None
        }
    }

    StitchedLink {
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        text: "Anything at all"
    }

    StitchedLink {
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        text: "Three others"
        notNowReason: "These are all that fit today."
    }
}
