#pragma once

#include "core/crew/crew.h"

#include <set>

namespace lidlark::crew {

/// Whether a guest may say this at all: what was played, what came of the pieces, and what happened
/// to them meanwhile; no counts, answers, requests, place, goals, check-ins or home sheet.
bool guestMaySay(journal::Kind kind);

/// Whether @p member may hand on what others wrote: a parent's or the therapist's device.
bool vouches(const Member &member);

/// Whether @p member may hand on what @p writer wrote: its own, what the same phone wrote under the
/// id it had before, where it was no other part of the same home, and anybody's where it vouches.
bool mayHandOn(const Crew &crew, const Member &member, const DeviceId &writer);

/// Whether a lane is open to @p member: read by holding its key. @p lane of a box is that of the
/// member's crew. A guest seals plays in, and reads no home lane (events.md 4).
bool mayRead(const Member &member, const journal::Lane &lane);

/// Whether @p member may write a @p kind in @p lane (events.md 4).
/// @param hasTherapist lid lists are the therapist's, where there is one.
bool mayWrite(const Member &member, const journal::Lane &lane, journal::Kind kind,
              bool hasTherapist);

/// Whether @p lane is one of those that the crew of @p box is about: the box's, or one of a home
/// that somebody in it has. The clinic's lane is its own crew's alone, and that crew has no other.
bool isAbout(const std::string &box, const Crew &crew, const journal::Lane &lane);

/// Whether @p event counts, as far as its device's membership tells: it was in time, and its right.
/// True for a device that was never let in: what it wrote came from before there was a crew.
bool counts(const Crew &crew, const journal::Event &event);

/// Who of those who are in may hold the key of @p lane, @p today. A guest's week ends by the day.
std::set<DeviceId> entitledTo(const Crew &crew, const journal::Lane &lane, Day today);

} // namespace lidlark::crew
