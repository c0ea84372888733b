#include "core/rotation/filters.h"

namespace lidlark::rotation {

namespace {

using catalogue::Tag;

/// Getting out and putting back, together, that somebody tired will still do.
constexpr int tiredMinutes = 2;

bool suitsTiredAdult(const catalogue::Activity &activity)
{
    return activity.energy != catalogue::Energy::High &&
           activity.minutes.out + activity.minutes.back <= tiredMinutes;
}

bool suitsIllness(const Candidate &candidate)
{
    constexpr catalogue::TagSet mouthOrShared{Tag::Breath, Tag::Straw, Tag::Dough, Tag::Water,
                                              Tag::Foam};
    return (candidate.cautions & mouthOrShared).empty() &&
           !trains(candidate, catalogue::Skill::Orl);
}

bool needsNoBox(const Candidate &candidate)
{
    return candidate.activity->noBox && boxPieces(candidate) == 0;
}

} // namespace

bool isQuiet(const Candidate &candidate)
{
    return candidate.activity->sound == catalogue::Sound::Quiet &&
           !candidate.cautions.has(Tag::Noise);
}

bool staysWith(const Candidate &candidate, const Filters &filters)
{
    const catalogue::Activity &activity = *candidate.activity;
    return !(filters.noTable && activity.space == catalogue::Space::Table) &&
           !(filters.noMess && activity.mess > 0) && !(filters.quiet && !isQuiet(candidate)) &&
           !(filters.oneHand && activity.hands > 1) &&
           !(filters.tiredAdult && !suitsTiredAdult(activity)) &&
           !(filters.awayFromHome && !needsNoBox(candidate)) &&
           !(filters.someoneIsIll && !suitsIllness(candidate));
}

bool fitsIn(const catalogue::Minutes &needed, std::optional<int> minutes)
{
    return !minutes || needed.total() <= *minutes;
}

} // namespace lidlark::rotation
