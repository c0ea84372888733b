pragma ComponentBehavior: Bound

import QtQml

/// What of the workbench's own things stands open: no child's, and kept from page to page.
QtObject {
    /// The build on the packing table, and the box of it that is packed; empty: the newest.
    property string packBuild: ""
    property string packBox: ""
    /// The therapist's own activity that is written.
    property string ownEntry: ""
}
