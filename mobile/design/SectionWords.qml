pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The heading of a part of a screen.
Words {
    role: Theme.Reason
    soft: true
    heading: true
}
