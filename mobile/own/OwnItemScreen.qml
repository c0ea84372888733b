pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// A thing of the therapist's own, or one of ours that measures otherwise, written part by part.
/// What is typed is held as one goes. Whom it affects is shown before it is kept for boxes, and
/// then it is sent to those it is for.
Sheet {
    id: screen

    required property Household household
    required property string entry

    signal back()

    OwnItemViewModel {
        id: draft

        household: screen.household
        entry: screen.entry
    }

    OwnBoxesViewModel {
        id: boxes

        household: screen.household
        entry: screen.entry
        thing: true
        asked: draft.weighed || draft.signedOff
    }

    component Part: OwnPart {
        required property int part

        width: screen.contentWidth
        toMend: draft.toMend[part] ?? ""
    }

    header: TitleBar {
        text: draft.title
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
        text: draft.signedOff ? qsTr("Ready for boxes. Change anything, and it is a draft again; the boxes keep what they have.")
            : draft.ours ? qsTr("One of ours, as you measured it. What it brings to mind stays, and nothing changes in a box before you send it there.")
            : qsTr("A draft. It is kept as you write, and nobody else sees it.")
    }

    Part {
        id: namesPart

        part: OwnItemViewModel.Names
        objectName: "part-names"
        visible: !draft.ours
        title: qsTr("Name and picture")
        summary: draft.name
        Component.onCompleted: opened = !draft.ours && draft.name.length === 0

        Repeater {
            model: namesPart.opened ? 1 : 0

            OwnNamesPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: sizesPart

        part: OwnItemViewModel.Sizes
        objectName: "part-sizes"
        title: qsTr("Its sizes")
        summary: draft.follows
        Component.onCompleted: opened = draft.ours && !draft.signedOff

        Repeater {
            model: sizesPart.opened ? 1 : 0

            OwnSizesPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: materialsPart

        part: OwnItemViewModel.Materials
        objectName: "part-materials"
        title: qsTr("What is in it, and what to mind")
        summary: draft.minded

        Repeater {
            model: materialsPart.opened ? 1 : 0

            OwnMaterialsPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: keepingPart

        part: OwnItemViewModel.Keeping
        objectName: "part-keeping"
        title: qsTr("Washing and keeping")

        Repeater {
            model: keepingPart.opened ? 1 : 0

            OwnKeepingPart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    Part {
        id: placePart

        part: OwnItemViewModel.Place
        objectName: "part-place"
        visible: !draft.ours
        title: qsTr("Its place in the box")

        Repeater {
            model: placePart.opened ? 1 : 0

            OwnPlacePart {
                width: screen.contentWidth
                writing: draft
            }
        }
    }

    OwnReach {
        id: reach

        width: screen.contentWidth
        visible: draft.weighed
        boxes: boxes
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
        text: draft.signedOff ? qsTr("Send to the chosen boxes") : draft.weighed ? qsTr("Keep it for boxes") : qsTr("See whom it affects")
        notNowReason: draft.signedOff ? (boxes.chosen > 0 ? "" : qsTr("Choose whose box it is for"))
                                      : draft.partsToMend > 0 ? qsTr("Something is still to do in %n parts", "", draft.partsToMend) : ""
        onClicked: {
            if (draft.signedOff) {
                boxes.send()
            } else if (draft.weighed) {
                if (draft.signOff())
                    screen.held = boxList // it stands below all that was written
            } else if (draft.weigh()) {
                screen.held = reach
            }
        }
    }
}
