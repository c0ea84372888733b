#pragma once

#include "core/play/our_way.h"
#include "core/play/own_note.h"
#include "core/store/event_repository.h"

#include <optional>

namespace lidlark::store {

/// Writing the projection rows of what adults write down themselves. Nothing to write removes the
/// row.
Outcome writeOurWay(Database &database, const LaneSubject &subject,
                    const std::optional<play::OurWay> &way);
Outcome writeOwnNote(Database &database, const LaneSubject &subject,
                     const std::optional<play::OwnNote> &note);

} // namespace lidlark::store
