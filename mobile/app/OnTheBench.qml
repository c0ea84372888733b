pragma ComponentBehavior: Bound

import QtQml
import Lidlark.App

/// What of the workbench's own things stands open: no child's, and kept from page to page.
QtObject {
    id: bench

    /// Where all other pages lead back to.
    required property BackWays others
    /// Those that stay beside a page of theirs where there is room for two.
    readonly property list<string> lists: ["builds", "build", "designs", "shelf", "packing", "own-activities", "goals", "prints"]

    /// The build on the packing table, and the box of it that is packed; empty: the newest.
    property string packBuild: ""
    property string packBox: ""
    /// The therapist's own activity that is written.
    property string ownEntry: ""
    /// The therapist's own thing, or the one of ours that measures otherwise, that is written, and
    /// where its page leads back to.
    property string ownItem: ""
    property string ownItemBack: "own-items"
    /// The build that is bought for, the box of it and the kind of box that are written; an empty
    /// kind: a new one.
    property string openBuild: ""
    property string openBox: ""
    property string openDesign: ""
    property string boxBack: "" ///< Where the page of the box leads back to; empty: its build.
    /// The thing of the shelf whose page stands open; empty: a new one. What the shelf is searched for.
    property string supply: ""
    property string shelfSearched: ""
    property int shelfOnly: 0
    property string shelfBack: "builds" ///< Where the shelf leads back to.
    property string supplyBack: "shelf" ///< Where a thing's own page leads back to.
    /// The lot that is recalled from a thing's own page; empty: from the packing table.
    property string recallLot: ""
    /// The page of the crew that is looked at, where all that is done about it leads back to: a
    /// child's, or "packers".
    property string crewPage: "crew"

    /// Where a goal's level and its words lead back to: the goals, or its own page.
    property string goalBack: "goals"

    /// Where a page goes back to; several pages of the bench lead to some of them.
    function backFrom(where: string): string {
        if (where === "shelf")
            return bench.shelfBack
        if (where === "goal-rating" || where === "goal-writing")
            return bench.goalBack
        if (where === "own-item")
            return bench.ownItemBack
        if (where === "build-box" && bench.boxBack.length > 0)
            return bench.boxBack
        if (where === "supply")
            return bench.supplyBack
        return where === "recall" && bench.recallLot.length > 0 ? "supply" : bench.others.backFrom(where)
    }

    /// The list that a page was come to from, as far back as any page of the bench lies from its own;
    /// else the board.
    function listBefore(where: string): string {
        let before = bench.backFrom(where)
        for (let steps = 0; steps < 3 && before.length > 0; ++steps) {
            if (bench.lists.includes(before))
                return before
            before = bench.backFrom(before)
        }
        return "workbench"
    }

    function showBox(code: string, from: string) {
        bench.openBox = code
        bench.boxBack = from
    }

    function showOwnItem(item: string, from: string) {
        bench.ownItem = item
        bench.ownItemBack = from
    }

    function showShelf(from: string) {
        bench.supply = ""
        bench.shelfBack = from
    }

    function showSupply(item: string, from: string) {
        bench.supply = item
        bench.supplyBack = from
    }
}
