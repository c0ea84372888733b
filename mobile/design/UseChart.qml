pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// How many pieces were used in each of the last weeks: bars with their numbers and the weeks in
/// words. No trend and no judgement; time runs as the reader reads.
Rectangle {
    id: chart

    property list<int> pieces
    /// One a week, empty where none stands: the first, the last, and the months between.
    property list<string> labels
    /// The whole chart in one sentence.
    property string text: ""
    /// The pieces as the language writes numbers; without: as digits.
    property list<string> numbers
    readonly property int most: Math.max(1, ...chart.pieces)
    readonly property real unit: Math.min(18, 90 / chart.most)
    readonly property real cell: bars.width / Math.max(1, chart.pieces.length)
    readonly property bool monthsShown: !Theme.largeText
    readonly property real numberRoom: sample.height + 3

    width: parent ? parent.width : implicitWidth
    implicitWidth: 30 * chart.pieces.length + 2 * Theme.cardPadding
    implicitHeight: column.height + 2 * Theme.cardPadding
    radius: Theme.radiusPaper
    color: Theme.picture
    border.width: Theme.cardEdgeWidth
    border.color: Theme.cardEdge
    Accessible.role: Accessible.StaticText
    Accessible.name: chart.text

    Column {
        id: column

        x: Theme.cardPadding
        y: Theme.cardPadding
        width: chart.width - 2 * Theme.cardPadding

        Row {
            id: bars

            width: parent.width

            Repeater {
                model: chart.pieces

                UseBar {
                    required property int modelData
                    required property int index

                    width: chart.cell
                    height: chart.most * chart.unit + chart.numberRoom
                    unit: chart.unit
                    pieces: modelData
                    words: chart.numbers[index] ?? modelData.toString()
                }
            }
        }

        Rectangle {
            width: parent.width
            height: 2
            color: Theme.drawingInk
        }

        Item {
            id: months

            width: parent.width
            height: chart.monthsShown ? sample.height + Theme.smallGap : 0
            visible: chart.monthsShown

            Repeater {
                model: chart.labels

                Words {
                    required property int index
                    required property string modelData
                    readonly property real start: index * chart.cell + 3

                    x: months.LayoutMirroring.enabled ? months.width - start - width : start
                    y: Theme.smallGap
                    width: implicitWidth
                    role: Theme.Caption
                    visible: index > 0 && index < chart.labels.length - 1 && start + implicitWidth <= months.width
                    spoken: false
                    color: Theme.pictureSoft
                    text: modelData
                }
            }
        }

        Item {
            width: parent.width
            implicitHeight: firstWeek.height + (ends.fits ? 0 : lastWeek.height) + Theme.smallGap

            QtObject {
                id: ends

                readonly property bool fits: firstWeek.implicitWidth + lastWeek.implicitWidth + Theme.gap <= column.width
            }

            Words {
                id: firstWeek

                anchors.left: parent.left
                y: Theme.smallGap
                role: Theme.Caption
                spoken: false
                color: Theme.pictureText
                text: chart.labels.length > 0 ? chart.labels[0] : ""
            }

            Words {
                id: lastWeek

                anchors.right: parent.right
                anchors.bottom: parent.bottom
                role: Theme.Caption
                spoken: false
                color: Theme.pictureText
                text: chart.labels.length > 1 ? chart.labels[chart.labels.length - 1] : ""
            }
        }
    }

    Words {
        id: sample

        visible: false
        role: Theme.Caption
        text: "0"
    }
}
