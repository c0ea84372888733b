pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Prints

/// One print: how it is wanted, the pages as they will come out, and the file.
Sheet {
    id: screen

    required property Household household
    required property string print
    property alias build: job.build
    property alias folder: job.folder
    property string backName: qsTr("Back to all prints")

    signal back()

    news: job.said

    PrintViewModel {
        id: job

        objectName: "printJob"
        household: screen.household
        print: screen.print
    }

    header: TitleBar {
        text: job.name
        backName: screen.backName
        onBack: screen.back()
    }

    PrintChoices {
        width: screen.contentWidth
        job: job
    }

    ProblemNote {
        width: screen.contentWidth
        text: job.problem
    }

    PagesSeen {
        width: screen.contentWidth
        job: job
    }

    PaperButton {
        objectName: "savePrint"
        width: screen.contentWidth
        patch: true
        text: qsTr("Keep it as a file")
        notNowReason: job.notNowReason.length > 0 ? job.notNowReason : job.pageCount === 0 ? qsTr("There is no page yet.") : ""
        onClicked: {
            screen.held = where
            job.save()
        }
    }

    Words {
        id: where

        objectName: "printSaid"
        width: screen.contentWidth
        visible: text.length > 0
        text: job.said
    }
}
