pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: label words and the three sizes of caution.
Column {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    LabelStrip {
        width: parent.width
        words: ["Words that a rule puts on a label.", "Other words of another rule."]
        source: "Where they stand"
    }

    CautionStrip {
        width: parent.width
        lead: "Right beside Fin, hand within touch."
        text: "Small parts: six lights. Wheat in the dough. Stop if anything goes to the mouth."
    }

    CautionBand {
        width: parent.width
        text: "Arm’s reach"
    }

    CautionButton {
        width: parent.width
        text: "It burst"
    }

    FullStop {
        width: parent.width
        height: implicitHeight
        focus: false
        lead: "Two eyes are missing. Look now: table, floor, clothes, dough."
        answers: ["Found", "Floor checked"]
    }
}
