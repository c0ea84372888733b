#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/menu.h"

namespace lidlark::rotation {

/// Whether an admitted activity stays when these life words are on (job.md F6). They combine: each
/// one that is on must agree.
/// - no table: does not need one. No mess: nothing to wipe. One hand: a real one-handed way.
/// - quiet: quiet, and without the NOISE caution.
/// - tired adult: not high in energy, and out and back within two minutes together.
/// - away from home: needs nothing from the box.
/// - someone is ill: no breath or mouth play, nothing shared (safety.md HY-02, HY-03): no BREATH,
///   STRAW, DOUGH, WATER or FOAM, and no mouth and breath skill.
bool staysWith(const Candidate &candidate, const Filters &filters);

/// Quiet, and without the NOISE caution. Away from home these come first (job.md scenario 9).
bool isQuiet(const Candidate &candidate);

/// Whether out + play + back fit into what the family has. @param minutes absent: no limit.
bool fitsIn(const catalogue::Minutes &needed, std::optional<int> minutes);

} // namespace lidlark::rotation
