pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// A phone that comes into a crew: the code, the place, a name, and the wait to be let in.
Sheet {
    id: screen

    required property CrewLife crewLife
    /// The camera is looking for the squares.
    property bool looking: false
    property bool readByCamera: false

    signal back()
    signal joined()

    function title(): string {
        switch (joining.stage) {
        case JoiningIn.Code: return screen.looking ? qsTr("Read the squares") : qsTr("I have a code")
        case JoiningIn.Where: return qsTr("Where do the phones meet?")
        case JoiningIn.Who: return qsTr("Who are you?")
        case JoiningIn.Waiting: return qsTr("Waiting to be let in")
        default: return qsTr("You are in")
        }
    }

    function missing(): string {
        if (joining.busy && joining.stage === JoiningIn.Who)
            return qsTr("One moment.")
        switch (joining.stage) {
        case JoiningIn.Code: return joining.codeReady ? "" : qsTr("The nine words first.")
        case JoiningIn.Where: return joining.place.trim().length > 0 ? "" : qsTr("The place first.")
        default: return ""
        }
    }

    function goOn() {
        if (screen.looking)
            screen.looking = false
        else if (joining.stage === JoiningIn.In)
            screen.joined()
        else
            joining.next()
    }

    function goBack() {
        if (screen.looking)
            screen.looking = false
        else if (joining.stage === JoiningIn.Where || joining.stage === JoiningIn.Who)
            joining.back()
        else
            screen.back()
    }

    function backByKey(event: KeyEvent) {
        event.accepted = true
        screen.goBack()
    }

    onLookingChanged: {
        if (screen.looking) {
            screen.readByCamera = false
            eye.setSource("CameraPage.qml", { joining: joining, room: Qt.binding(() => screen.middleHeight - 2 * Theme.gap) })
        }
        screen.toTop()
        bar.readOut()
    }
    Keys.onBackPressed: event => screen.backByKey(event)
    Keys.onEscapePressed: event => screen.backByKey(event)

    news: joining.stage === JoiningIn.In ? qsTr("You are in") : screen.readByCamera ? joining.soFar : joining.help

    JoiningIn {
        id: joining

        crew: screen.crewLife
        onStageChanged: {
            screen.toTop()
            bar.readOut()
        }
    }

    header: TitleBar {
        id: bar

        text: screen.title()
        backName: joining.stage === JoiningIn.In ? "" : qsTr("One page back")
        onBack: screen.goBack()
    }

    ProblemNote {
        width: screen.contentWidth
        text: joining.problem
    }

    TypedCode {
        width: screen.contentWidth
        visible: joining.stage === JoiningIn.Code && !screen.looking
        joining: joining
        onCameraAsked: screen.looking = true
    }

    // Nothing of a camera is there before somebody asks for it, and nothing afterwards.
    Loader {
        id: eye

        width: screen.contentWidth
        active: screen.looking
        visible: eye.active
    }

    Connections {
        target: eye.item
        ignoreUnknownSignals: true

        function onFound() {
            screen.readByCamera = true
            screen.looking = false
        }
    }

    PlaceFields {
        width: screen.contentWidth
        visible: joining.stage === JoiningIn.Where
        address: joining.place
        user: joining.user
        password: joining.password
        onAddressEdited: text => joining.place = text
        onUserEdited: text => joining.user = text
        onPasswordEdited: text => joining.password = text
    }

    WhoJoins {
        width: screen.contentWidth
        visible: joining.stage === JoiningIn.Who
        joining: joining
        onNotNow: screen.back()
    }

    WaitingToBeLetIn {
        width: screen.contentWidth
        visible: joining.stage === JoiningIn.Waiting
        joining: joining
    }

    Words {
        objectName: "youAreIn"
        width: screen.contentWidth
        visible: joining.stage === JoiningIn.In
        role: Theme.Heading
        text: qsTr("What you may see has come to this phone. What you note goes to the crew.")
    }

    foot: ActionFoot {
        visible: joining.stage !== JoiningIn.Waiting && joining.stage !== JoiningIn.Who
        height: visible ? implicitHeight : 0
        text: screen.looking ? qsTr("Use words instead") : joining.stage === JoiningIn.In ? qsTr("Begin") : qsTr("Go on")
        notNowReason: screen.looking ? "" : screen.missing()
        onClicked: screen.goOn()
    }
}
