#include "core/rotation/candidate.h"

#include <algorithm>

namespace lidlark::rotation {

Candidate candidateOf(const safety::Admitted &admitted)
{
    return {&admitted.activity(), admitted.cautions(), admitted.items()};
}

int boxPieces(const Candidate &candidate)
{
    int pieces = 0;
    for (const catalogue::ItemUse &use : candidate.items) {
        if (use.source == catalogue::Source::Box)
            pieces += use.quantity;
    }
    return pieces;
}

bool trains(const Candidate &candidate, catalogue::Skill skill)
{
    const catalogue::Activity &activity = *candidate.activity;
    return std::ranges::count(activity.skillsMain, skill) > 0 ||
           std::ranges::count(activity.skillsAlso, skill) > 0;
}

} // namespace lidlark::rotation
