#include "core/safety/rules.h"

#include <algorithm>

namespace lidlark::safety {

namespace {

using catalogue::Supervision;
using catalogue::Tag;
using catalogue::TagSet;

constexpr int alwaysBesideMonths = 36;
constexpr int atLeastReachMonths = 72;

bool hasAny(TagSet tags, TagSet wanted)
{
    return !(tags & wanted).empty();
}

/// Chunky crayons carry no tag, and SV-02 names crayons.
bool usesCrayons(const Form &form)
{
    return std::any_of(form.parts.begin(), form.parts.end(), [](const Part &part) {
        return part.kind && (part.kind->id.value == "crayons" || part.kind->id.value == "chunky");
    });
}

/// SV-01: "any age with balloon, band, cord, coin, foam, scissors under 6 years"; a rubber band is
/// a band. activities.md 1.4 asks for `beside` with SHARP and WATER at any age, and the stricter
/// wins.
bool needsBesideForThings(const Form &form)
{
    return hasAny(form.tags, {Tag::Balloon, Tag::Band, Tag::Elastic, Tag::Cord, Tag::Coin,
                              Tag::Foam, Tag::Sharp, Tag::Water});
}

bool needsBesideForCompany(const Form &form, const Facts &facts)
{
    if (form.tags.has(Tag::Paper) && facts.room.mouther)
        return true; // activities.md 1.4, PAPER.
    // SP-01: "asleep or out", and the pieces are counted with a hand on them.
    const bool smallOneNearby = facts.home.underThree || facts.home.mouther;
    return smallOneNearby && hasAny(form.tags, {Tag::Small, Tag::Coin});
}

} // namespace

Supervision supervisionNeeded(const Form &form, const Facts &facts)
{
    const Supervision own = form.activity->supervision;
    const bool veryYoung = !facts.months || *facts.months < alwaysBesideMonths; // SV-01.
    if (veryYoung || needsBesideForThings(form) || needsBesideForCompany(form, facts))
        return Supervision::Beside;
    const bool watched = hasAny(form.tags, {Tag::Small, Tag::Dough, Tag::Pinch}) ||
                         usesCrayons(form); // SV-02: small parts, crayons, dough, tweezers, pegs.
    if (*facts.months < atLeastReachMonths && watched)
        return std::max(own, Supervision::Reach);
    return own;
}

void supervisionRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    const Supervision needed = supervisionNeeded(form, facts);
    if (facts.situation.room.adultCanBe < needed)
        refusal.push_back({.code = ReasonCode::NeedsCloserAdult, .supervision = needed});
}

} // namespace lidlark::safety
