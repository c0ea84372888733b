#pragma once

#include <QtCore/QPointer>
#include <QtQuick/QQuickItem>

#include <vector>

namespace lidlark::design {

/// What a switch can light: one control, or a group of them.
struct ScanEntry {
    std::vector<QPointer<QQuickItem>> stops; ///< The controls in it, in reading order.
    std::vector<ScanEntry> parts;            ///< What the group opens into; none: one control.

    [[nodiscard]] bool isGroup() const { return !parts.empty(); }
    /// True while it has a control that is shown and can be pressed.
    [[nodiscard]] bool alive() const;
};

/// True for a control that Tab meets and that can show it is lit (it has a property `lit`).
[[nodiscard]] bool isScanStop(const QQuickItem *item);

/// What a switch walks through below @p root, in the order of the focus chain: all controls where
/// there are few, else groups of those that lie together.
[[nodiscard]] std::vector<ScanEntry> scanEntries(QQuickItem *root);

/// What @p group opens into, small groups within it already opened.
[[nodiscard]] std::vector<ScanEntry> openedGroup(const ScanEntry &group);

} // namespace lidlark::design
