#pragma once

#include "core/checkin/checkin_events.h"
#include "core/child/goal_events.h"
#include "core/child/home_facts.h"
#include "core/child/reading_language.h"
#include "core/play/play_events.h"
#include "core/store/event_repository.h"

#include <optional>

namespace lidlark::store {

/// Writing the projection rows of a home's lanes. Nothing to write removes the row.
Outcome writeFact(Database &database, const LaneSubject &subject,
                  const std::optional<child::Fact> &fact);
Outcome writePermission(Database &database, const LaneSubject &subject,
                        const std::optional<child::Permission> &permission);
Outcome writePlay(Database &database, const LaneSubject &subject,
                  const std::optional<play::Play> &play);
Outcome writeOffered(Database &database, const LaneSubject &subject,
                     const std::optional<play::Offered> &offered);
Outcome writeCheckIn(Database &database, const LaneSubject &subject,
                     const std::optional<checkin::CheckIn> &checkIn);
Outcome writeGoal(Database &database, const LaneSubject &subject,
                  const std::optional<child::ChildGoal> &goal);
Outcome writeReadingLanguage(Database &database, const LaneSubject &subject,
                             const std::optional<child::ReadingLanguage> &reading);

} // namespace lidlark::store
