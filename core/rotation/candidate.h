#pragma once

#include "core/catalogue/activity.h"
#include "core/safety/admit.h"

#include <span>

namespace lidlark::rotation {

/// An admitted activity as the menu reads it: the form in which it would be played here and now.
/// Points into the Admitted it was made from, which must outlive it.
struct Candidate {
    const catalogue::Activity *activity = nullptr;
    catalogue::TagSet cautions;
    std::span<const catalogue::ItemUse> items;
};

Candidate candidateOf(const safety::Admitted &admitted);

/// Pieces of box items lying about while it is played.
int boxPieces(const Candidate &candidate);

/// Whether the skill is among the main or the further ones.
bool trains(const Candidate &candidate, catalogue::Skill skill);

} // namespace lidlark::rotation
