pragma ComponentBehavior: Bound

import QtQml
import Lidlark.App

/// Where the phone's own back key leads, from page to page. Empty: nowhere. A play ends by putting
/// back, and a child's view by the held control alone.
QtObject {
    id: ways

    required property AppScreens screens

    function backFrom(where: string): string {
        switch (where) {
        case "settings":
        case "home-sheet":
        case "let-in":
        case "sees":
        case "about-me":
        case "hand-over":
        case "remove":
            return "crew"
        case "shared-place":
            return ways.screens.placeBack
        case "whose":
            return ways.screens.playInHand.puttingBack ? "putback" : "play"
        case "count":
        case "requests":
            return "box"
        case "item":
            return ways.screens.itemBack
        case "noted":
            return ways.screens.notedBack
        case "own-notes":
            return "notebook"
        case "dried-out":
            return ways.screens.driedOutBack
        case "emergency":
            return ways.screens.emergencyBack
        case "take-out":
            return ways.screens.takeOutBack
        case "breaths":
            return "together"
        case "room":
        case "week":
        case "everything":
        case "together":
        case "box":
        case "notebook":
        case "crew":
            return "today"
        default:
            return ""
        }
    }
}
