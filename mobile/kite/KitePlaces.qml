pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Where everything lies on the kite's screen, so that it never scrolls and no target is under the
/// sizes of checkin.md 10: kites 20 mm high (16 mm on the smallest phone), clouds and bag likewise
/// (12 mm there, with the hand in one row), the hand 12 mm, 4 mm between.
QtObject {
    id: places

    required property real width
    required property real height
    required property real questionHeight
    required property bool mirrored
    required property size held
    /// Width of the speaker's sign beside the question; 0: there is none.
    required property real speaker

    readonly property real side: Theme.childMargin
    readonly property real between: Theme.childGap
    readonly property real small: 12 * Theme.dotsPerMm
    readonly property real inner: places.width - 2 * places.side
    readonly property bool wide: places.width > places.height
    /// Fits with kites, clouds and hand in rows of their own.
    readonly property bool roomy: !places.wide && places.height >= (Theme.largeText ? 125 : 112) * Theme.dotsPerMm
    readonly property bool compact: !places.wide && !places.roomy
    /// Large words would leave no room for the small pictures, which mean the same.
    readonly property bool wordless: !places.roomy && Theme.largeText
    /// In large text on a small phone, or one that lies, the held control stands beside the question.
    readonly property bool heldOnTop: Theme.largeText && !places.roomy

    readonly property real questionStart: Theme.margin + 2
    /// The sign is drawn in the middle of its target, which leaves room for a letter before it.
    readonly property real speakerRoom: (places.speaker - Theme.signSize) / 2 - 2
    readonly property real speakerStart: places.heldOnTop ? places.width - places.side - places.held.width - places.speaker
                                                          : places.width - places.speaker
    readonly property real speakerX: places.fromStart(places.speakerStart, places.speaker)
    readonly property real questionWidth: places.speaker > 0 ? places.speakerStart + places.speakerRoom - places.questionStart
        : places.width - 2 * places.questionStart - (places.heldOnTop ? places.held.width : 0)

    /// One line of a heading (large, two); on a small phone no more than leaves the kites their size.
    readonly property real usualHeading: (Theme.largeText ? 2 * Theme.lineHeight(Theme.Label, Theme.textScale, Theme.arabicScript)
                                                          : Theme.lineHeight(Theme.Question, Theme.textScale, Theme.arabicScript)) + 1
    readonly property real leftForHeading: places.height - places.lastRow - places.smallRow - 3 * places.between - 48 * Theme.dotsPerMm - 2 * Theme.smallGap
    readonly property real mostHeading: places.compact ? Math.min(places.usualHeading, places.leftForHeading) : places.usualHeading

    readonly property real top: places.heldOnTop ? Math.max(places.questionHeight, places.held.height) : places.questionHeight
    readonly property real roomyTile: Math.floor((places.height - places.questionHeight - places.side - places.handHeight - 4 * places.between) / 4)
    readonly property real lastRow: places.heldOnTop || places.wide ? places.side : places.held.height + 2 * Theme.smallGap
    readonly property real compactTile: Math.floor((places.height - places.top - places.lastRow - places.smallRow - 3 * places.between) / 3)
    readonly property real largest: 40 * Theme.dotsPerMm

    readonly property real kiteHeight: places.wide ? places.height - places.top - places.side - places.smallRow - places.between
                                     : Math.min(places.largest, places.roomy ? places.roomyTile : places.compactTile)
    readonly property real kiteWidth: places.wide ? (places.inner - 2 * places.between) / 3 : places.inner
    readonly property real smallRow: places.small + Theme.smallGap
    readonly property real otherTop: places.top + (places.wide ? 1 : 3) * (places.kiteHeight + places.between)
    readonly property real otherHeight: places.roomy ? places.kiteHeight : places.smallRow
    readonly property real otherWidth: places.roomy ? (places.inner - places.between) / 2
                                     : places.wide && !places.heldOnTop ? (places.inner - places.held.width - 3 * places.between) / 3
                                                   : (places.inner - 2 * places.between) / 3
    readonly property rect hand: places.roomy
        ? Qt.rect(places.fromHand(places.side, places.handWidth), places.height - places.side - places.handHeight, places.handWidth, places.handHeight)
        : Qt.rect(places.otherX(2), places.otherTop, places.otherWidth, places.otherHeight)
    /// As high as the held control beside it, which must not reach up to the bag.
    readonly property real handHeight: Math.max(places.small, places.held.height)
    readonly property real handWidth: places.inner - places.held.width - places.between
    readonly property real heldStart: places.width - places.side - places.held.width
    readonly property point heldAt: Qt.point(
        places.wide || places.heldOnTop ? places.fromStart(places.heldStart, places.held.width)
                                        : places.fromHand(places.heldStart, places.held.width),
        places.heldOnTop ? (places.wide ? (places.top - places.held.height) / 2 : 0)
        : places.wide ? places.otherTop + (places.otherHeight - places.held.height) / 2
        : places.height - places.held.height - (places.roomy ? places.side : Theme.smallGap))

    function fromStart(x: real, width: real): real {
        return places.mirrored ? places.width - x - width : x
    }

    /// As above, for a phone held in the right hand; in the left it is the other side.
    function fromHand(x: real, width: real): real {
        return places.mirrored !== Theme.leftHanded ? places.width - x - width : x
    }

    function kiteX(index: int): real {
        return places.wide ? places.fromStart(places.side + index * (places.kiteWidth + places.between), places.kiteWidth) : places.side
    }

    function kiteY(index: int): real {
        return places.top + (places.wide ? 0 : index * (places.kiteHeight + places.between))
    }

    function otherX(index: int): real {
        return places.fromStart(places.side + index * (places.otherWidth + places.between), places.otherWidth)
    }
}
