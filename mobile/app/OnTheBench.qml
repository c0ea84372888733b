pragma ComponentBehavior: Bound

import QtQml

/// What of the workbench's own things stands open: no child's, and kept from page to page.
QtObject {
    /// The build on the packing table, and the box of it that is packed; empty: the newest.
    property string packBuild: ""
    property string packBox: ""
    /// The build that is bought for, the box of it and the kind of box that are written; an empty
    /// kind: a new one.
    property string openBuild: ""
    property string openBox: ""
    property string openDesign: ""
}
