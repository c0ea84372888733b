#pragma once

#include "core/base/result.h"
#include "core/usecase/export_source.h"
#include "core/usecase/open_table.h"

#include <vector>

namespace lidlark::usecase {

/// The tables about a box are one group, whichever file they are made in.
inline constexpr const char *boxGroup = "the box";

using Tables = Result<std::vector<OpenTable>>;

/// Who is on the home sheets, what stands there, what the therapist has allowed.
Tables familyTables(const ExportSource &source);
/// The boxes: what belongs in them, what lies in them, and how it came and went.
Tables boxTables(const ExportSource &source);
/// What is asked for and what is asked about.
Tables openMatterTables(const ExportSource &source);
/// What was played, how, and what is planned.
Tables playTables(const ExportSource &source);
/// Check-ins: day and part of day, as they are kept, and nothing to place them by.
Tables checkInTables(const ExportSource &source);
/// Goals in the family's words.
Tables goalTables(const ExportSource &source);
/// What the therapist has written for these boxes, each as a catalogue file.
Tables ownTables(const ExportSource &source);
/// The notes to oneself of whoever writes on this phone.
Tables noteTables(const ExportSource &source);
/// Everything that was noted, a line each, also what was replaced or taken back since. Not what
/// belongs to check-ins and notes, and not on which days an activity stood in a menu: that is shown
/// to nobody (events.md 4).
Tables notedTables(const ExportSource &source);

} // namespace lidlark::usecase
