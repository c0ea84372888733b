#include "core/rotation/why.h"

#include "core/rotation/filters.h"

#include <algorithm>

namespace lidlark::rotation {

namespace {

struct Reason {
    WhyCode code;
    int tenths;
};

/// What being new, or being just what a life word asked for, weighs beside the counted parts.
constexpr int quietly = 10;

std::optional<WhyCode> kiteWhy(std::optional<checkin::Kite> kite)
{
    if (!kite || *kite == checkin::Kite::Bag)
        return std::nullopt;
    switch (*kite) {
    case checkin::Kite::Resting:
        return WhyCode::CheckinResting;
    case checkin::Kite::Steady:
        return WhyCode::CheckinSteady;
    case checkin::Kite::Whirling:
        return WhyCode::CheckinWhirling;
    case checkin::Kite::Clouds:
        return WhyCode::CheckinClouds;
    case checkin::Kite::Bag:
        break;
    }
    return std::nullopt;
}

std::vector<Reason> reasonsOf(const OfferFacts &facts, const Candidate &candidate,
                              const Question &question)
{
    const Worth &worth = facts.worth;
    const int freshness = worth.of(Part::Freshness);
    const bool lap = candidate.activity->space != catalogue::Space::Table;
    std::vector<Reason> reasons{
        {WhyCode::KnownFriend, worth.of(Part::KnownFriend)},
        {WhyCode::New, facts.isNew ? std::max(freshness, quietly) : 0},
        {WhyCode::Freshness, facts.isNew ? 0 : freshness},
        {WhyCode::UseSoon, worth.of(Part::UseSoon)},
        {WhyCode::Coverage, facts.coverage},
        {WhyCode::Waiting, worth.of(Part::Waiting)},
        {WhyCode::NoTable, question.filters.noTable && lap ? quietly : 0},
        {WhyCode::Quiet, question.filters.quiet && isQuiet(candidate) ? quietly : 0}};
    if (const auto code = kiteWhy(question.kite))
        reasons.push_back({*code, worth.of(Part::CheckinFit)});
    return reasons;
}

} // namespace

std::vector<WhyCode> whyOf(const OfferFacts &facts, const Candidate &candidate,
                           const Question &question)
{
    std::vector<Reason> reasons = reasonsOf(facts, candidate, question);
    std::erase_if(reasons, [](const Reason &reason) { return reason.tenths <= 0; });
    std::ranges::sort(reasons, [](const Reason &left, const Reason &right) {
        return left.tenths != right.tenths ? left.tenths > right.tenths : left.code < right.code;
    });
    std::vector<WhyCode> why;
    if (facts.worth.of(Part::GoalLink) > 0)
        why.push_back(WhyCode::Goal);
    for (const Reason &reason : reasons)
        why.push_back(reason.code);
    if (why.empty())
        why.push_back(WhyCode::AllHere);
    why.resize(std::min(why.size(), mostWhys));
    return why;
}

} // namespace lidlark::rotation
