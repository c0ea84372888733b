pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One offer: its picture closed by the supervision band, its name, why, and the minutes.
/// The whole card is the target. In large text picture, band and words stack.
Pressable {
    id: offer

    property string drawing: ""
    property string name: ""
    property string why: ""
    property string supervision: ""
    property int minutesOut: 0
    property int minutesPlay: 0
    property int minutesBack: 0
    property string outText: ""
    property string playText: ""
    property string backText: ""
    /// The three of them in words that need no picture.
    property string spokenMinutes: ""
    readonly property bool stacked: Theme.largeText
    readonly property int pictureWidth: 112
    readonly property int pictureHeight: 150
    readonly property real edge: Theme.cardEdgeWidth
    readonly property int wordsInset: Theme.cardPadding + 1

    text: offer.name
    accessibleName: offer.name + sentence(offer.supervision) + sentence(offer.why)
                    + (offer.spokenMinutes.length > 0 ? sentence(offer.spokenMinutes)
                       : sentence(offer.outText) + sentence(offer.playText) + sentence(offer.backText))
    implicitHeight: Math.max(126, offer.implicitContentHeight + offer.topPadding + offer.bottomPadding)
    topPadding: offer.edge + paper.drop
    bottomPadding: offer.edge - paper.drop
    startPadding: offer.edge

    background: PaperEdge {
        id: paper

        edgeColour: offer.hovered ? Theme.ink : Theme.cardEdge
        pressed: offer.down
    }

    contentItem: Item {
        id: content

        implicitHeight: offer.stacked ? offer.pictureHeight + band.height + words.height + Theme.gap + Theme.cardPadding
                                      : Math.max(words.height + 2 * 9, band.height + 80)

        PictureGround {
            id: picture

            anchors.left: parent.left
            width: offer.stacked ? parent.width : offer.pictureWidth
            height: offer.stacked ? offer.pictureHeight : parent.height - band.height
            mirrored: offer.mirrored
            roundBottom: false
            roundEnd: offer.stacked

            Drawing {
                anchors.fill: parent
                name: offer.drawing
                middleOnly: true
                cornerRadius: Theme.radiusPaper - offer.edge
            }
        }

        CautionBand {
            id: band

            anchors.left: parent.left
            y: picture.height
            width: picture.width
            height: implicitHeight
            mirrored: offer.mirrored
            roundBottom: !offer.stacked
            text: offer.supervision
        }

        Column {
            id: words

            x: offer.stacked ? offer.wordsInset : offer.mirrored ? offer.wordsInset : offer.pictureWidth + offer.wordsInset
            y: offer.stacked ? offer.pictureHeight + band.height + Theme.gap : (parent.height - height) / 2
            width: parent.width - 2 * offer.wordsInset - (offer.stacked ? 0 : offer.pictureWidth)
            spacing: 7 - Theme.scriptRoom

            Words {
                width: parent.width
                role: Theme.Row
                spoken: false
                text: offer.name
            }

            Words {
                width: parent.width
                role: Theme.Reason
                soft: true
                spoken: false
                visible: offer.why.length > 0
                text: offer.why
            }

            Flow {
                width: parent.width
                spacing: 9

                MinuteWords {
                    minutes: offer.minutesOut
                    text: offer.outText
                }

                MinuteWords {
                    minutes: offer.minutesPlay
                    text: offer.playText
                }

                MinuteWords {
                    minutes: offer.minutesBack
                    text: offer.backText
                }
            }
        }
    }
}
