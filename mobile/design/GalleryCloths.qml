pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: the four cloths and what lies on them.
Column {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    YesFoot {
        question: "All back in the box?"
        answer: "Yes, all back"
        otherText: "Something’s different"
    }

    ActionFoot {
        place: Theme.SecondHome
        text: "Next step"
        otherText: "Stop here"
    }

    ActionFoot {
        place: Theme.School
        text: "Play"
        notNowReason: "Somebody under three is in the room."
    }

    ClothFoot {
        place: Theme.Away

        Words {
            width: parent.width
            role: Theme.Label
            color: Theme.clothText
            text: "Away"
        }
    }
}
