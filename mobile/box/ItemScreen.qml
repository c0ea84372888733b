pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// One item of the box: how many, what needs a look now, then what may be noted, asked for and known.
Sheet {
    id: screen

    required property Household household
    required property string itemId

    signal back()
    signal floorCheckWanted()
    signal driedOutWanted()

    ItemViewModel {
        id: item

        household: screen.household
        itemId: screen.itemId
    }

    header: TitleBar {
        text: item.name
        backName: qsTr("Back")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: item.problem
    }

    PicturedWords {
        width: screen.contentWidth
        side: Theme.itemLarge
        role: Theme.Heading
        heading: true
        drawing: item.drawing
        text: item.countWords
        note: item.standWords
    }

    QuestionCards {
        width: screen.contentWidth
        household: screen.household
        itemId: screen.itemId
        asking: true
        visible: !screen.household.guest && count > 0
    }

    QuestionCards {
        width: screen.contentWidth
        household: screen.household
        itemId: screen.itemId
        asking: false
    }

    ItemHygiene {
        width: screen.contentWidth
        item: item
    }

    ItemLook {
        width: screen.contentWidth
        item: item
        onDriedOutWanted: screen.driedOutWanted()
    }

    ItemPieces {
        width: screen.contentWidth
        keepShown: !screen.household.guest
        household: screen.household
        itemId: screen.itemId
    }

    ItemChanges {
        width: screen.contentWidth
        item: item
        onNoted: {
            if (item.needsFloorCheck())
                screen.floorCheckWanted()
            else
                screen.toTop()
        }
        onDriedOutWanted: screen.driedOutWanted()
    }

    RequestCards {
        width: screen.contentWidth
        visible: !screen.household.guest
        household: screen.household
        itemId: screen.itemId
        headed: true
    }

    ItemUse {
        width: screen.contentWidth
        household: screen.household
        itemId: screen.itemId
    }

    SectionWords {
        width: screen.contentWidth
        visible: item.care.length > 0
        text: qsTr("Care")
    }

    Repeater {
        model: item.care

        Words {
            required property string modelData

            width: screen.contentWidth
            text: modelData
        }
    }

    StitchedLink {
        objectName: "mouthed"
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        visible: !item.mouthed && item.most > 0
        text: qsTr("It was in a mouth")
        onClicked: {
            if (item.noteHygiene("mouthed"))
                screen.toTop()
        }
    }
}
