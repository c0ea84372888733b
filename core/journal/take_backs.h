#pragma once

#include "core/journal/event.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::journal {

/// Whether what a kind says can be taken back within the day. It cannot where it is no word of a
/// caregiver's (met, offered), where others build on it (whose box, members, lid lists, goals), or
/// where it has a way back of its own that must stay the only one: a check-in is removed, a
/// permission is withdrawn and never loosened again by accident (events.md 8.3).
bool canBeTakenBack(Kind kind);

/// The fields of a TakenBack. @param event that is taken back, itself a TakenBack where something
/// is put in again.
std::string fieldsOfTakingBack(const Event &event);
/// The identity of the event that a TakenBack names.
std::optional<std::string> takenBackBy(const Event &event);

/// @p fields of an event that was said in one breath with event @p first of its device and lane: a
/// full count, or a piece thrown away and asked for. They are taken back together.
std::string fieldsWith(const std::string &fields, std::uint64_t first);
/// The counter that such an event shares with the others of its breath: that of the first.
std::uint64_t breathOf(const Event &event);

/// Whether @p taking is a word that @p event gives way to: of the same lane and the same day, and
/// of the same person, that is the same author or the same device. Of a safety statement the author
/// alone counts, as for every correction of one (events.md 8.2).
bool givesWayTo(const Event &event, const Event &taking);

/// What stands of one subject: its events without those that a standing TakenBack names, and
/// without the TakenBacks themselves. A pure function of the set, in the order of @p events. An
/// identity is a hash of all of its event, so no two can name each other.
std::vector<Event> withoutTakenBack(std::vector<Event> events);

/// The same for every event by itself: whether it stands. @returns as many as @p events.
std::vector<bool> whichStand(const std::vector<Event> &events);

} // namespace lidlark::journal
