#pragma once

#include "core/store/event_repository.h"
#include "core/workbench/box_status.h"
#include "core/workbench/kept_build.h"
#include "core/workbench/kept_supply.h"
#include "core/workbench/pack_mark.h"

#include <optional>
#include <span>
#include <string_view>

namespace lidlark::store {

/// The one lane of the therapist's own (events.md 4).
inline const journal::Lane clinicLane{journal::LaneKind::Clinic, "clinic"};

/// The rows of one subject of the clinic's lane that is packed, kept or cleaned. Any other subject,
/// and any other lane, changes nothing.
Outcome writeClinicSubject(Database &database, const LaneSubject &subject,
                           std::span<const journal::Event> events, const journal::Seen &seen);

} // namespace lidlark::store
