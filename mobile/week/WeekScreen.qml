pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Week

/// The week ahead, for adults: one thing a day, to be changed by hand. Nothing in it is owed.
Sheet {
    id: screen

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand
    /// The day whose ways to change it are shown; -1: none.
    property int opened: -1

    signal back()
    signal playBegun()

    spacing: Theme.chipGap

    WeekViewModel {
        id: week

        household: screen.household
        sitting: screen.sitting
        playInHand: screen.playInHand
    }

    header: TitleBar {
        text: qsTr("The week ahead")
        backName: qsTr("Back to today")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("One small thing a day, if it suits. Tap a day to change it. Nothing here is owed.")
    }

    ProblemNote {
        objectName: "weekProblem"
        width: screen.contentWidth
        text: week.problem
        actionText: qsTr("Put away")
        onAction: week.refresh()
    }

    Repeater {
        model: week

        WeekDayRow {
            id: day

            required property int index

            objectName: "day-" + day.index
            width: screen.contentWidth
            opened: screen.opened === day.index
            onTapped: screen.opened = day.opened ? -1 : day.index
            onKeepWanted: week.keep(day.index)
            onFreeWanted: week.leaveFree(day.index)
            onGiveBackWanted: week.giveBack(day.index)
            onAnotherWanted: week.another(day.index)
            onPlayWanted: {
                if (week.begin())
                    screen.playBegun()
            }
        }
    }

    Words {
        objectName: "gap"
        width: screen.contentWidth
        visible: week.gap.length > 0
        role: Theme.Reason
        soft: true
        text: week.gap
    }

    foot: ActionFoot {
        text: qsTr("Keep this week")
        notNowReason: week.somethingOpen ? "" : qsTr("All of it is kept")
        otherText: week.somethingSaid ? qsTr("Start afresh") : ""
        onClicked: week.keepAll()
        onOtherClicked: week.giveAllBack()
    }
}
