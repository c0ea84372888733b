pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: offers, rows and fields.
Column {
    id: rows

    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    KiteRow {
        width: parent.width
        drawing: "kite-steady"
        text: "Flying steady"
        note: "Fin showed us just now"
    }

    OfferCard {
        width: parent.width
        drawing: "scene-larder"
        name: "Twist Larder"
        why: "For opening his lunch tub"
        supervision: "Arm’s reach"
        minutesOut: 1
        minutesPlay: 5
        minutesBack: 1
        outText: "out 1"
        playText: "play 5"
        backText: "back 1"
    }

    OfferCard {
        width: parent.width
        drawing: "no-such-drawing"
        name: "An offer whose drawing is missing"
        why: "The gap is seen"
        supervision: "Right beside"
        minutesPlay: 4
        playText: "play 4"
    }

    LinkRow {
        width: parent.width
        drawing: "item-pegs"
        text: "Clothes pegs"
        note: "Six in the box"
        endText: "Monday"
    }

    LinkRow {
        width: parent.width
        sign: "sign-box"
        text: "Words and size"
    }

    LinkRow {
        width: parent.width
        text: "Send the box list"
        notNowReason: "There is no other phone yet."
    }

    ChoiceRow {
        width: parent.width
        text: "Light"
        exclusive: true
        checked: true
    }

    ChoiceRow {
        width: parent.width
        text: "Dark"
        note: "For the evening"
        exclusive: true
    }

    ChoiceRow {
        width: parent.width
        drawing: "item-dough"
        text: "Dough"
        note: "Two tubs"
    }

    PaperField {
        label: "What we call your child"
        placeholder: "A short name"
    }

    PaperField {
        label: "Code"
        text: "puffin seven"
        problem: "This code is out of date."
    }

    PaperArea {
        label: "What you noticed"
        placeholder: "One line is enough"
    }

    Stepper {
        width: parent.width
        text: "Boxes to pack"
        value: 4
        lessName: "One box less"
        moreName: "One box more"
        onChanged: value => this.value = value
    }

    ExceptionRow {
        id: eyes

        drawing: "item-eyes"
        name: "Stick-on eyes"
        note: "Six went out. Four are home."
        words: ["used up", "lost", "broken", "dried out", "still in use"]
        currentWord: 1
        countQuestion: "How many?"
        countTo: 2
        currentCount: 2
        onWordChosen: index => eyes.currentWord = index
        onCountChosen: count => eyes.currentCount = count
    }
}
