pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Workbench

/// What a report to those who pay may say: what one use of an activity has cost in material, over
/// many boxes, and how little that tells.
Sheet {
    id: screen

    required property Household household

    signal back()

    ReportViewModel {
        id: report

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("For a report")
        backName: qsTr("Back to the workbench")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: report.problem
    }

    Card {
        width: screen.contentWidth
        visible: report.perUse.length > 0

        Words {
            objectName: "perUse"
            width: parent.width
            role: Theme.Label
            heading: true
            text: qsTr("About %1 of material for each activity that was played").arg(report.perUse)
        }

        Words {
            width: parent.width
            text: qsTr("All that lies in %n boxes, over the plays shared with you.", "", report.boxes)
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            text: report.time
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            visible: report.leftOut > 0
            text: qsTr("%n boxes left out: what lies in it has no price here, or one in other money.", "", report.leftOut)
        }
    }

    Words {
        objectName: "tooFew"
        width: screen.contentWidth
        visible: report.perUse.length === 0 && report.problem.length === 0
        text: qsTr("What one play costs is told from ten boxes on: fewer would tell something of one family.")
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("It counts only plays that families chose to share, and says nothing of whether anybody was helped.")
    }
}
