pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The heading of a part of a screen: nearer to what follows than to what stands above it.
Words {
    id: section

    role: Theme.Reason
    soft: true
    heading: true
    topPadding: Theme.gap - Theme.lift(section.role, Theme.textScale, section.arabicScript)
}
