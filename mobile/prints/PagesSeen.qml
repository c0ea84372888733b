pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Prints

/// The pages of a print under each other, whole, or twice as large by halves. They scroll with the
/// screen and in no other way.
Column {
    id: pages

    required property PrintViewModel job
    property int part: PagePreview.Whole

    spacing: Theme.gap

    SectionWords {
        width: pages.width
        visible: pages.job.pageCount > 0
        text: qsTr("As it will come out")
    }

    ChipFlow {
        width: pages.width
        visible: pages.job.pageCount > 0

        Repeater {
            model: [qsTr("Whole page"), qsTr("Left half"), qsTr("Right half")]

            FilterChip {
                id: part

                required property string modelData
                required property int index

                objectName: "part-" + part.index
                text: part.modelData
                picked: pages.part === part.index
                onClicked: pages.part = part.index
            }
        }
    }

    Repeater {
        model: pages.job.pageCount

        Rectangle {
            id: frame

            required property int index

            width: pages.width
            height: seen.implicitHeight + 2 * Theme.lineWidth
            color: Theme.line

            PagePreview {
                id: seen

                objectName: "page-" + frame.index
                x: Theme.lineWidth
                y: Theme.lineWidth
                width: frame.width - 2 * Theme.lineWidth
                height: seen.implicitHeight
                source: pages.job
                page: frame.index
                part: pages.part
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("%1, page %2 of %3").arg(pages.job.name).arg(Numerals.of(frame.index + 1)).arg(Numerals.of(pages.job.pageCount))
            }
        }
    }
}
