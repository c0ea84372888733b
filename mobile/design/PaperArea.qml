pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Lidlark.Design

/// Several lines to write on. Grows with what is written.
FieldFrame {
    id: frame

    property alias text: input.text
    property alias placeholder: hint.text
    property alias readOnly: input.readOnly
    property int lines: 3

    signal edited()

    paperHeight: Math.max(Theme.touchTarget, frame.lines * hint.lineHeight + 2 * input.topPadding, input.implicitHeight)
    focused: input.activeFocus || input.lit
    onTapped: input.forceActiveFocus()
    written: input.text
    onLetterWritten: letter => {
        input.insert(input.length, letter)
        frame.edited()
    }
    onLetterTakenBack: {
        input.remove(input.length - 1, input.length)
        frame.edited()
    }

    T.TextArea {
        id: input

        /// A switch is on it.
        property bool lit: false
        readonly property bool writes: true

        width: parent.width
        height: parent.height
        leftPadding: Theme.cardPadding
        rightPadding: Theme.cardPadding
        topPadding: Theme.gap
        bottomPadding: Theme.gap
        implicitHeight: contentHeight + topPadding + bottomPadding
        wrapMode: TextEdit.Wrap
        horizontalAlignment: TextEdit.AlignLeft
        font: Theme.font(Theme.Body, false, Theme.textScale, Theme.arabicScript)
        color: Theme.ink
        selectionColor: Theme.chosen
        selectedTextColor: Theme.chosenText
        selectByMouse: true
        KeyNavigation.priority: KeyNavigation.BeforeItem
        Accessible.name: frame.label
        Accessible.description: frame.problem
        onTextChanged: {
            if (activeFocus)
                frame.edited()
        }

        Words {
            id: hint

            x: input.leftPadding
            y: input.topPadding
            width: input.width - 2 * input.leftPadding
            soft: true
            spoken: false
            visible: input.length === 0 && !input.preeditText
        }
    }
}
