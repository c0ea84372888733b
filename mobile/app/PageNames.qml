pragma ComponentBehavior: Bound

import QtQml

/// What is known of a page by the name of its route.
QtObject {
    /// What was just noted is told there: never in a child's view, and not while there is play.
    readonly property list<string> forAdults: ["today", "box", "item", "count", "requests", "dried-out", "notebook",
        "crew", "home-sheet", "take-out", "floor", "putback", "different", "noticed", "resume", "workbench",
        "box-of-child", "round"]

    /// "home-sheet": HomeSheetRoute.qml.
    function fileOf(where: string): string {
        if (where === "putback")
            return "PutBackRoute.qml"
        const words = where.split("-").map(word => word.charAt(0).toUpperCase() + word.slice(1))
        return words.join("") + "Route.qml"
    }
}
