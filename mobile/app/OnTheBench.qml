pragma ComponentBehavior: Bound

import QtQml

/// What of the workbench's own things stands open: no child's, and kept from page to page.
QtObject {
    id: bench

    /// The build on the packing table, and the box of it that is packed; empty: the newest.
    property string packBuild: ""
    property string packBox: ""
    /// The therapist's own activity that is written.
    property string ownEntry: ""
    /// The build that is bought for, the box of it and the kind of box that are written; an empty
    /// kind: a new one.
    property string openBuild: ""
    property string openBox: ""
    property string openDesign: ""
    /// The thing of the shelf whose page stands open; empty: a new one. What the shelf is searched for.
    property string supply: ""
    property string shelfSearched: ""
    property int shelfOnly: 0
    property string shelfBack: "builds" ///< Where the shelf leads back to.
    /// The lot that is recalled from a thing's own page; empty: from the packing table.
    property string recallLot: ""
    /// The page of the crew that is looked at, where all that is done about it leads back to: a
    /// child's, or "packers".
    property string crewPage: "crew"

    /// Where a goal's level and its words lead back to: the goals, or its own page.
    property string goalBack: "goals"

    /// Where a page goes back to that several pages of the bench lead to; empty: as for all others.
    function backFrom(where: string): string {
        if (where === "shelf")
            return bench.shelfBack
        if (where === "goal-rating" || where === "goal-writing")
            return bench.goalBack
        return where === "recall" && bench.recallLot.length > 0 ? "supply" : ""
    }

    function showShelf(from: string) {
        bench.supply = ""
        bench.shelfBack = from
    }
}
