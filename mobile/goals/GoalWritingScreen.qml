pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Goals

/// A goal is written with the family: five levels in everyday words, how it is today, and when it is
/// looked at again. Once agreed on, the words stand; other words are another version.
Sheet {
    id: screen

    required property Household household
    /// The goal whose words are changed; empty: a new one.
    required property string goal

    signal back()
    signal agreed()

    GoalWritingViewModel {
        id: writing

        household: screen.household
        goal: screen.goal
    }

    header: TitleBar {
        text: screen.goal.length > 0 ? qsTr("Other words for a goal") : qsTr("A goal with %1").arg(screen.household.child)
        backName: qsTr("Back")
        onBack: screen.back()
    }

    news: writing.problem

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        visible: screen.goal.length > 0
        text: qsTr("The words so far stay, with all that was said of them. A new version begins today.")
    }

    PaperArea {
        id: words

        objectName: "goalWords"
        width: screen.contentWidth
        lines: Theme.largeText ? 2 : 1
        label: qsTr("What the child will do, in the family's words")
        placeholder: qsTr("Opens his lunch tub at school")
        problem: writing.wordsProblem
        onEdited: writing.words = words.text
        Component.onCompleted: words.text = writing.words
    }

    PaperArea {
        id: shortWords

        objectName: "goalShort"
        width: screen.contentWidth
        lines: Theme.largeText ? 2 : 1
        label: qsTr("The same after “For …” (may be left out)")
        placeholder: qsTr("opening his lunch tub")
        problem: writing.shortProblem
        onEdited: writing.shortWords = shortWords.text
        Component.onCompleted: shortWords.text = writing.shortWords
    }

    AreaChoice {
        width: screen.contentWidth
        areas: writing.areas
        chosen: writing.chosenAreas
        onAreaTapped: area => writing.chooseArea(area)
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Five steps: what somebody could see on the day of the review")
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("Say who does what, and where. From one step to the next, let one thing change.")
    }

    Repeater {
        model: writing

        LevelField {
            id: field

            required property int index
            required property int level
            required label
            required words
            required finding
            required today

            objectName: "level-" + field.level
            width: screen.contentWidth
            onWritten: text => writing.setLevel(field.index, text)
            onTodayChosen: writing.setToday(field.index)
        }
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        strong: true
        visible: text.length > 0
        text: writing.baselineProblem
    }

    PaperArea {
        id: reason

        objectName: "goalReason"
        width: screen.contentWidth
        visible: writing.rewords || reason.text.length > 0
        lines: 2
        label: qsTr("Why other words? (may be left out)")
        problem: writing.reasonProblem
        onEdited: writing.reason = reason.text
    }

    ReviewChoice {
        width: screen.contentWidth
        review: writing.review
        weeks: writing.reviewWeeks
        problem: writing.reviewProblem
        onWeeksChosen: weeks => writing.reviewInWeeks(weeks)
        onMoved: weeks => writing.moveReview(weeks)
    }

    SkillChoice {
        width: screen.contentWidth
        skills: writing.skills
        chosen: writing.chosenSkills
        onSkillTapped: skill => writing.chooseSkill(skill)
    }

    ProblemNote {
        width: screen.contentWidth
        text: writing.problem
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        visible: writing.ready
        text: writing.onlyRemarks
              ? qsTr("Look at what stands under a step; it keeps nothing from being agreed on. Agreed words stay as they are.")
              : qsTr("Read it aloud together. Agreed words stay as they are.")
    }

    foot: ActionFoot {
        text: writing.ready ? qsTr("We agree on these words") : qsTr("Look it over")
        onClicked: {
            if (!writing.ready)
                writing.lookOver()
            else if (writing.agree())
                screen.agreed()
        }
    }
}
