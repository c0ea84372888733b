#pragma once

#include <QJsonObject>

#include "core/checkin/checkin_events.h"

#include <cstdint>
#include <optional>

namespace lidlark::mobile {

/// The last tap on a kite in this part of the day, the child's or the adult's guess.
struct KiteTap {
    checkin::CheckIn entry;
    /// Milliseconds by the phone's clock, in memory only: a check-in is never kept with its time
    /// (checkin.md 9). 0: from before this start.
    std::int64_t tappedMs = 0;
    bool pairOpen = true; ///< An after-kite would still make a pair with it.

    /// What stands now: the after-kite, where there is one.
    [[nodiscard]] checkin::Kite kite() const { return entry.after.value_or(entry.before); }
    /// The last tap within a minute counts, so this one may still be changed (checkin.md 6).
    [[nodiscard]] bool changeableAt(std::int64_t nowMs) const;
};

QJsonObject toJson(const KiteTap &tap);
/// @returns nothing when the object says none.
std::optional<KiteTap> kiteTapFrom(const QJsonObject &object);

} // namespace lidlark::mobile
