pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Welcome

/// First run: three questions and the lid list, one page each. No account.
Sheet {
    id: screen

    required property Household household
    property int page: 0
    readonly property int lastPage: 3

    signal finished()

    function next() {
        if (screen.page < screen.lastPage) {
            screen.page += 1
            screen.toTop()
        } else if (welcome.finish()) {
            screen.finished()
        }
    }

    WelcomeViewModel {
        id: welcome

        household: screen.household
        Component.onCompleted: welcome.load()
    }

    header: TitleBar {
        text: screen.page === 0 ? qsTr("A box has come") : screen.page === 1 ? qsTr("Who else is at home?")
              : screen.page === 2 ? qsTr("What must stay away?") : qsTr("What lies in the box?")
        backName: screen.page > 0 ? qsTr("One page back") : ""
        onBack: {
            screen.page -= 1
            screen.toTop()
        }
    }

    StepMarks {
        width: screen.contentWidth
        count: screen.lastPage + 1
        current: screen.page
        text: qsTr("Page %1 of %2").arg(screen.page + 1).arg(screen.lastPage + 1)
    }

    ProblemNote {
        width: screen.contentWidth
        visible: welcome.problem.length > 0
        text: welcome.problem
    }

    ChildPage {
        width: screen.contentWidth
        visible: screen.page === 0
        answers: welcome
    }

    HomePage {
        width: screen.contentWidth
        visible: screen.page === 1
        answers: welcome
    }

    AwayPage {
        width: screen.contentWidth
        visible: screen.page === 2
        answers: welcome
    }

    LidListPage {
        width: screen.contentWidth
        visible: screen.page === 3
        answers: welcome
    }

    foot: ActionFoot {
        text: screen.page < screen.lastPage ? qsTr("Go on") : qsTr("Begin")
        notNowReason: screen.page === 0 && (welcome.childName.length === 0 || welcome.adultName.length === 0)
                      ? qsTr("Two names first; a letter will do.") : ""
        onClicked: screen.next()
    }
}
