pragma ComponentBehavior: Bound

import QtQml

/// Where the phone's own back key leads, from page to page. Empty: nowhere. A play ends by putting
/// back, and a child's view by the held control alone.
QtObject {
    id: ways

    property string item: "box"
    property string noted: "box"
    property string driedOut: "item"
    property string emergency: "today"
    property string takeOut: "today"
    property string place: "crew"
    property string crew: "crew"
    property string goals: "today"
    property string prints: "box"
    required property bool puttingBack
    required property bool therapist

    function backFrom(where: string): string {
        switch (where) {
        case "settings":
        case "home-sheet":
        case "sees":
        case "about-me":
            return "crew"
        case "let-in":
        case "hand-over":
        case "remove":
            return ways.crew
        case "shared-place":
            return ways.place
        case "prints":
            return ways.prints
        case "print-preview":
            return "prints"
        case "whose":
            return ways.puttingBack ? "putback" : "play"
        case "count":
            return "box"
        case "requests":
            return ways.therapist ? "box-of-child" : "box"
        case "revise":
        case "coaching":
        case "video-plan":
            return "box-of-child"
        case "box-of-child":
        case "round":
        case "report":
        case "packing":
        case "builds":
        case "own-activities":
            return "workbench"
        case "designs":
        case "build":
        case "shelf":
            return "builds"
        case "supply":
        case "own-items":
            return "shelf"
        case "design":
            return "designs"
        case "build-box":
        case "build-sheet":
            return "build"
        case "own-activity":
            return "own-activities"
        case "item":
            return ways.item
        case "goals":
            return ways.goals
        case "goal":
        case "goal-numbers":
            return "goals"
        case "goal-ending":
            return "goal"
        case "noted":
            return ways.noted
        case "own-notes":
            return "notebook"
        case "dried-out":
            return ways.driedOut
        case "emergency":
            return ways.emergency
        case "take-out":
            return ways.takeOut
        case "breaths":
            return "together"
        case "video-session":
            return "video-plan"
        case "pack-box":
        case "pack-item":
        case "print-build":
        case "tend":
        case "recall":
        case "packers":
            return "packing"
        case "have-ready":
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
