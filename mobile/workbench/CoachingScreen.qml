pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Workbench

/// The handing over of a box: the parent does it, the one who packs looks on and ticks.
Sheet {
    id: screen

    required property Household household

    signal back()

    CoachingViewModel {
        id: list

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Handing over to %1's home").arg(screen.household.childTitle)
        backName: qsTr("Back")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("The parent does each of these while you are there. The ticks stay on this phone.")
    }

    ProblemNote {
        width: screen.contentWidth
        text: list.problem
    }

    Repeater {
        model: list

        ChoiceRow {
            id: line

            required property int index
            required property string words
            required property bool done

            objectName: "coaching-" + line.index
            width: screen.contentWidth
            text: line.words
            checked: line.done
            onToggled: {
                list.tick(line.index, !line.done)
                line.checked = Qt.binding(() => line.done)
            }
        }
    }
}
