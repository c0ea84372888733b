pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// An activity of the therapist's own, written part by part. What is typed is kept as one goes; when
/// nothing is left to mend it is made ready, and then sent to the boxes it is for.
Sheet {
    id: screen

    required property Household household
    required property string entry

    signal back()

    OwnWritingViewModel {
        id: draft

        household: screen.household
        entry: screen.entry
    }

    OwnBoxesViewModel {
        id: boxes

        household: screen.household
        entry: screen.entry
        asked: draft.signedOff
    }

    component Part: OwnPart {
        required property int part

        width: screen.contentWidth
        summary: draft.inShort[part] ?? ""
        toMend: draft.toMend[part] ?? ""
    }

    header: TitleBar {
        text: draft.name.length > 0 ? draft.name : qsTr("An activity of your own")
        backName: qsTr("Back; it is kept")
        onBack: {
            draft.keep()
            screen.back()
        }
    }

    news: draft.problem

    ProblemNote {
        width: screen.contentWidth
        text: draft.problem
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: draft.signedOff ? qsTr("Ready for boxes. Change a word, and it is a draft again; the boxes keep what they have.")
                                : qsTr("A draft. It is kept as you write, and nobody else sees it.")
    }

    Part {
        id: wordsPart

        part: OwnWritingViewModel.Words
        objectName: "part-words"
        title: qsTr("Name and first words")
        Component.onCompleted: opened = draft.name.length === 0

        Repeater {
            model: wordsPart.opened ? 1 : 0

            OwnWordsPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: thingsPart

        part: OwnWritingViewModel.Things
        objectName: "part-things"
        title: qsTr("What it is played with")

        Repeater {
            model: thingsPart.opened ? 1 : 0

            OwnThingsPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: stepsPart

        part: OwnWritingViewModel.Steps
        objectName: "part-steps"
        title: qsTr("The steps")

        Repeater {
            model: stepsPart.opened ? 1 : 0

            OwnLineList {
                width: screen.contentWidth
                lines: draft.steps
                label: qsTr("Step %1")
                addText: qsTr("Add a step")
            }
        }
    }

    Part {
        id: gradingsPart

        part: OwnWritingViewModel.Gradings
        objectName: "part-gradings"
        title: qsTr("Easier and harder")

        Repeater {
            model: gradingsPart.opened ? 1 : 0

            OwnGradingsPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: skillsPart

        part: OwnWritingViewModel.Skills
        objectName: "part-skills"
        title: qsTr("What it is for")

        Repeater {
            model: skillsPart.opened ? 1 : 0

            OwnSkillsPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: timePart

        part: OwnWritingViewModel.Time
        objectName: "part-time"
        title: qsTr("Minutes, age, and how close you are")

        Repeater {
            model: timePart.opened ? 1 : 0

            OwnTimePart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: wayPart

        part: OwnWritingViewModel.Way
        objectName: "part-way"
        title: qsTr("How and where")

        Repeater {
            model: wayPart.opened ? 1 : 0

            OwnWayPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: cautionsPart

        part: OwnWritingViewModel.Cautions
        objectName: "part-cautions"
        title: qsTr("What to mind")

        Repeater {
            model: cautionsPart.opened ? 1 : 0

            OwnCautionsPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: homePart

        part: OwnWritingViewModel.Home
        objectName: "part-home"
        title: qsTr("What to say, and putting back")

        Repeater {
            model: homePart.opened ? 1 : 0

            OwnHomePart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    OwnBoxes {
        id: boxList

        width: screen.contentWidth
        visible: draft.signedOff
        boxes: boxes
    }

    OwnThrowAway {
        width: screen.contentWidth
        visible: !draft.signedOff
        onThrownAway: {
            if (draft.throwAway())
                screen.back()
        }
    }

    foot: ActionFoot {
        text: draft.signedOff ? qsTr("Send to the chosen boxes") : qsTr("Make it ready for boxes")
        notNowReason: draft.signedOff ? (boxes.chosen > 0 ? "" : qsTr("Choose whose box it is for"))
                                        : draft.partsToMend > 0 ? qsTr("Something is still to do in %n parts", "", draft.partsToMend) : ""
        onClicked: {
            if (draft.signedOff)
                boxes.send()
            else if (draft.makeReady())
                screen.held = boxList // it stands below all that was written
        }
    }
}
