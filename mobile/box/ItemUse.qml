pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// How many pieces went in each of the last weeks: for adults, without a judgement.
Column {
    id: part

    required property Household household
    required property string itemId

    spacing: Theme.gap
    visible: use.anyUse

    UseViewModel {
        id: use

        household: part.household
        itemId: part.itemId
    }

    SectionWords {
        width: part.width
        text: qsTr("Pieces gone, week by week")
    }

    UseChart {
        width: part.width
        pieces: use.pieces
        labels: use.labels
        text: use.words
    }
}
