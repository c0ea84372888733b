pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// Where the phones meet, tried out before it is kept; and the yes to sharing, or its end.
Sheet {
    id: screen

    required property CrewLife crewLife
    property string backName: qsTr("Back to the crew")
    readonly property bool kept: screen.crewLife.place.length > 0
    /// The place is known and the yes to it is all that is missing.
    readonly property bool asks: screen.kept && !screen.crewLife.agreed && place.address === screen.crewLife.place

    signal back()

    news: place.found

    SharedPlace {
        id: place

        crew: screen.crewLife
        onWorksChanged: {
            if (place.works && screen.asks)
                laidOut.restart()
        }
    }

    Timer {
        id: laidOut

        interval: 0
        onTriggered: screen.showItem(asked)
    }

    header: TitleBar {
        text: qsTr("Shared place")
        backName: screen.backName
        onBack: screen.back()
    }

    PlaceFields {
        width: screen.contentWidth
        address: place.address
        user: place.user
        password: place.password
        onAddressEdited: text => place.address = text
        onUserEdited: text => place.user = text
        onPasswordEdited: text => place.password = text
    }

    ProblemNote {
        objectName: "placeBars"
        width: screen.contentWidth
        text: place.works ? "" : place.found
    }

    Words {
        objectName: "placeWorks"
        width: screen.contentWidth
        visible: place.works
        role: Theme.Label
        text: place.found
    }

    WhatGoesOut {
        id: asked

        width: screen.contentWidth
        visible: screen.asks
        question: qsTr("Share in this way?")
        yes: qsTr("Share")
        onAgreed: {
            if (screen.crewLife.agree())
                screen.back()
        }
        onNotNow: screen.back()
    }

    Card {
        width: screen.contentWidth
        visible: screen.crewLife.agreed
        spacing: Theme.gap

        Words {
            objectName: "agreement"
            width: parent.width
            text: screen.crewLife.agreement
        }

        PaperButton {
            objectName: "withdraw"
            width: parent.width
            text: qsTr("Stop sharing")
            onClicked: screen.crewLife.withdraw()
        }
    }

    StitchedLink {
        objectName: "forgetPlace"
        anchors.left: parent.left
        visible: screen.kept
        text: qsTr("Forget this place")
        onClicked: place.forget()
    }

    foot: ActionFoot {
        visible: !screen.asks
        height: visible ? implicitHeight : 0
        text: qsTr("Try it out")
        notNowReason: place.busy ? qsTr("Trying it out.") : place.address.trim().length === 0 ? qsTr("An address first.") : ""
        onClicked: place.tryOut()
    }
}
