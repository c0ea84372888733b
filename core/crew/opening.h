#pragma once

#include "core/base/digest.h"
#include "core/crew/crew.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace lidlark::crew {

/// A new key for a lane: one epoch of it. The event stands in the box lane, so that everybody knows
/// of it; the key is in letters that only those named can open (events.md 10).
struct Opening {
    Digest id{}; ///< The hash of the event; empty (zeros) before there is one.
    journal::Lane lane;
    DeviceId by;
    /// The one device that writes under it: a guest's, whose plays go in sealed, or the one that
    /// hands a guest the box as it stands. Empty: all who hold it write.
    DeviceId writer;
    std::map<DeviceId, std::string> letters;
    /// Those of the same strand that it follows: what its opener knew to be the last ones.
    std::set<Digest> after;

    [[nodiscard]] std::set<DeviceId> holders() const;
};

std::string fieldsOf(const Opening &opening);
/// @returns nothing for another kind, or where a field is missing or astray.
std::optional<Opening> readOpening(const journal::Event &event);

/// The openings among @p events that count: their writers had the right to open that lane.
std::vector<Opening> openingsAmong(std::span<const journal::Event> events, const Crew &crew);

/// Whether @p member may open an epoch of @p lane: whoever may read it, but a guest. For whom it is
/// opened is no choice of theirs (rights.h, entitledTo).
bool mayOpen(const Member &member, const journal::Lane &lane);

/// Under which epoch a lane goes on.
struct InForce {
    const Opening *opening = nullptr; ///< Null: none yet, or those there are disagree.
    bool renew = false; ///< Another one has to be opened: for those entitled to it by then.
};

/// A lane, and within it the epochs that all write in, or those of one device.
struct Strand {
    journal::Lane lane;
    DeviceId writer; ///< Empty: all.
};

/// Guests who were left out of a later epoch of @p lane than one they could read: their time is
/// over for everybody, whatever a phone's own clock says.
std::set<DeviceId> guestsLeftOut(const journal::Lane &lane, const std::vector<Opening> &openings,
                                 const Crew &crew);

/// All that one follows, by itself or through others among @p openings.
std::set<Digest> allBefore(const Digest &id, const std::vector<Opening> &openings);
/// Whether @p later follows @p earlier, likewise.
bool follows(const Digest &later, const Digest &earlier, const std::vector<Opening> &openings);

/// Those of a strand that no other follows.
std::vector<const Opening *> headsOf(const Strand &strand, const std::vector<Opening> &openings);

/// @param openings of all lanes. @param entitled who may hold the key now. Concurrent openings with
/// equal holders: the smaller hash; with different ones nobody goes on until another is opened
/// (events.md 10).
InForce inForce(const Strand &strand, const std::vector<Opening> &openings,
                const std::set<DeviceId> &entitled);

} // namespace lidlark::crew
