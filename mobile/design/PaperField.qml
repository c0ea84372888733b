pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Lidlark.Design

/// One line to write on, its label above, and what is wrong with it below.
FieldFrame {
    id: frame

    /// Where several fields of a page have one label.
    property string accessibleName: frame.label
    property alias text: input.text
    property alias placeholder: hint.text
    property alias maximumLength: input.maximumLength
    property alias inputMethodHints: input.inputMethodHints
    property alias echoMode: input.echoMode
    property alias validator: input.validator
    property alias readOnly: input.readOnly

    signal accepted()
    signal edited()

    paperHeight: Math.max(Theme.touchTarget, input.implicitHeight, hint.visible ? hint.implicitHeight + input.topPadding + input.bottomPadding : 0)
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

    T.TextField {
        id: input

        /// A switch is on it.
        property bool lit: false
        readonly property bool writes: true

        width: parent.width
        height: parent.height
        leftPadding: Theme.cardPadding
        rightPadding: Theme.cardPadding
        topPadding: 8
        bottomPadding: 8
        implicitHeight: contentHeight + topPadding + bottomPadding
        verticalAlignment: TextInput.AlignVCenter
        horizontalAlignment: TextInput.AlignLeft
        font: Theme.font(Theme.Body, false, Theme.textScale, Theme.arabicScript)
        color: Theme.ink
        selectionColor: Theme.chosen
        selectedTextColor: Theme.chosenText
        selectByMouse: true
        Accessible.name: frame.accessibleName
        Accessible.description: frame.problem
        onAccepted: frame.accepted()
        onTextEdited: frame.edited()

        Words {
            id: hint

            x: input.leftPadding
            width: input.width - 2 * input.leftPadding
            anchors.verticalCenter: parent.verticalCenter
            soft: true
            spoken: false
            visible: input.length === 0 && !input.preeditText
        }
    }
}
