pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Video

/// The therapist plans a video session from the lid list that the family has confirmed.
Sheet {
    id: screen

    required property Household household

    signal done()
    signal sessionWanted()

    VideoPlanViewModel {
        id: plan

        household: screen.household
    }

    news: plan.problem

    header: TitleBar {
        text: qsTr("Video session")
        backName: qsTr("Back")
        onBack: screen.done()
    }

    ProblemNote {
        width: screen.contentWidth
        text: plan.problem
    }

    Repeater {
        model: plan.planned

        Card {
            id: line

            required property string modelData
            required property int index

            width: screen.contentWidth
            spacing: Theme.chipGap

            Words {
                width: parent.width
                text: line.modelData
            }

            LinkPair {
                width: parent.width
                text: line.index === 0 ? qsTr("Open it") : ""
                otherText: qsTr("Call it off")
                visible: line.index === 0
                onClicked: screen.sessionWanted()
                onOtherClicked: plan.callOff(line.index)
            }

            StitchedLink {
                anchors.left: parent.left
                visible: line.index > 0
                text: qsTr("Call it off")
                accessibleName: qsTr("Call it off: %1").arg(line.modelData)
                onClicked: plan.callOff(line.index)
            }
        }
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: plan.listNote
    }

    Stepper {
        objectName: "day"
        width: screen.contentWidth
        text: qsTr("Day")
        note: plan.dayWords
        value: plan.inDays
        to: plan.lastDay
        valueText: plan.inDays === 0 ? qsTr("today") : qsTr("in %1 days").arg(Numerals.of(plan.inDays))
        lessName: qsTr("A day earlier")
        moreName: qsTr("A day later")
        onChanged: days => plan.inDays = days
    }

    Stepper {
        objectName: "time"
        width: screen.contentWidth
        text: qsTr("Time")
        value: plan.quarter
        to: 95
        valueText: plan.timeWords
        lessName: qsTr("A quarter of an hour earlier")
        moreName: qsTr("A quarter of an hour later")
        onChanged: quarter => plan.quarter = quarter
    }

    Repeater {
        model: plan

        PlanPlace {
            id: row

            required property string place
            required property int index
            required name
            required drawing
            required note
            required others

            objectName: "place-" + row.index
            width: screen.contentWidth
            heading: row.place
            onAnotherWanted: plan.another(row.index)
        }
    }

    foot: ActionFoot {
        text: qsTr("Plan it")
        notNowReason: plan.canSend ? "" : qsTr("Nothing can be planned from this box now.")
        onClicked: {
            if (plan.send())
                screen.toTop()
        }
    }
}
