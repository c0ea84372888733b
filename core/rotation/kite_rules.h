#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/menu.h"

namespace lidlark::rotation {

/// What the check-in's own rules say of an entry for this menu. They never give way (design.md 5).
enum class KitePlace {
    Open,     ///< May be offered.
    HeldBack, ///< Only where nothing open can fill the place; then shown last.
    Never     ///< Not among the offers; still findable in the whole list.
};

/// The rules of checkin.md 4, where "first" means the offers of the menu:
/// - after the bedtime hour, whatever the kite does: no alerting entry;
/// - resting: no high energy for a child who tires fast; held back: long fine-finger entries and
///   entries with many words;
/// - whirling: nothing alerting, nothing with SHARP, ELASTIC, STRAW, FOAM or COIN, no entry with
///   many words, and none that left this child busier three times out of four; held
///   back: many small pieces and popping things;
/// - clouds: new entries are held back;
/// - steady, bag, no check-in: nothing more.
/// For a child who tires fast a high-energy entry is held back on every other day too
/// (job.md scenario 7).
KitePlace kitePlaceOf(const Candidate &candidate, const Question &question);

} // namespace lidlark::rotation
