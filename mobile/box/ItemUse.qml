pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// How long it probably lasts and on how few data that rests, and how many pieces went in each of the
/// last weeks: for adults, without a judgement.
Column {
    id: part

    required property Household household
    required property string itemId

    spacing: Theme.gap
    visible: use.anyUse || use.lasting.length > 0

    UseViewModel {
        id: use

        household: part.household
        itemId: part.itemId
    }

    SectionWords {
        width: part.width
        text: qsTr("How long it lasts")
    }

    Repeater {
        model: use.lasting

        Words {
            required property string modelData
            required property int index

            width: part.width
            soft: index > 0
            text: modelData
        }
    }

    Words {
        width: part.width
        visible: use.anyUse
        role: Theme.Caption
        soft: true
        text: qsTr("Pieces gone, week by week")
    }

    UseChart {
        width: part.width
        visible: use.anyUse
        pieces: use.pieces
        numbers: Array.from(use.pieces).map(pieces => Numerals.of(pieces))
        labels: use.labels
        text: use.words
    }
}
