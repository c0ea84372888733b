pragma ComponentBehavior: Bound

import QtQml

/// What of the workbench's own things stands open: no child's, and kept from page to page.
QtObject {
    id: bench

    /// The build on the packing table, and the box of it that is packed; empty: the newest.
    property string packBuild: ""
    property string packBox: ""
    /// The thing of the shelf whose page stands open; empty: a new one. What the shelf is searched for.
    property string supply: ""
    property string shelfSearched: ""
    property int shelfOnly: 0
    /// The lot that is recalled from a thing's own page; empty: from the packing table.
    property string recallLot: ""

    /// Where a page goes back to that several pages of the bench lead to; empty: as for all others.
    function backFrom(where: string): string {
        return where === "recall" && bench.recallLot.length > 0 ? "supply" : ""
    }
}
