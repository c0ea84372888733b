pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Who is in the room: names pegged on a line, a further line strung below when there are more.
Pressable {
    id: line

    property list<string> names
    property string note: ""
    property string moreText: ""
    // In large letters two long names do not fit on one line.
    readonly property int mostLetters: 14
    property int perLine: Theme.largeText && line.together().length > line.mostLetters ? 1 : 2
    readonly property list<string> tags: line.moreText.length > 0 ? [...line.names, line.moreText] : line.names
    readonly property int drop: line.down ? 1 : 0

    function together(): string {
        let all = ""
        for (let i = 0; i < line.names.length; ++i)
            all += (i > 0 ? ", " : "") + line.names[i]
        return all
    }

    accessibleName: line.note.length > 0 ? line.together() + " " + line.note : line.together()
    topPadding: line.drop
    bottomPadding: -line.drop
    rightInset: -2
    leftInset: -2

    contentItem: Column {
        Repeater {
            model: Math.ceil(line.tags.length / line.perLine)

            Row {
                id: rope

                required property int index

                anchors.right: parent?.right

                Repeater {
                    model: line.tags.slice(rope.index * line.perLine, (rope.index + 1) * line.perLine)

                    NameTag {
                        required property int index
                        required property string modelData

                        text: modelData
                        tilted: index % 2 === 1
                    }
                }
            }
        }

        Words {
            anchors.right: parent.right
            anchors.rightMargin: Theme.cardPadding
            role: Theme.Caption
            soft: true
            spoken: false
            visible: text.length > 0
            text: line.note
        }
    }
}
