#include "core/rotation/kite_rules.h"

#include "core/rotation/familiarity.h"

#include <algorithm>
#include <array>

namespace lidlark::rotation {

namespace {

using catalogue::Effect;
using catalogue::Energy;
using catalogue::Skill;
using catalogue::Tag;
using catalogue::Words;

/// A play longer than the usual five minutes is long for a child who is slow to start.
constexpr int usualPlayMinutes = 5;
/// Six pieces are a whole set of eyes, pegs or bands.
constexpr int manyPieces = 6;
/// An own record needs three plays before it speaks (activities.md 2.2).
constexpr int recordFloor = 3;

bool isLongFingerWork(const catalogue::Activity &activity)
{
    constexpr std::array fingerSkills{Skill::Pin, Skill::Tri, Skill::Inh, Skill::Iso};
    return activity.minutes.play > usualPlayMinutes &&
           std::ranges::any_of(activity.skillsMain, [&](Skill skill) {
               return std::ranges::count(fingerSkills, skill) > 0;
           });
}

/// At least three pairs, and three out of four or more of them tugging only afterwards.
bool leavesBusier(const Record &record)
{
    const int pairs = record.pairs.total();
    return pairs >= recordFloor && 4 * record.pairs.busier >= 3 * pairs;
}

bool hasManySmallPieces(const Candidate &candidate)
{
    return candidate.cautions.has(Tag::Small) && boxPieces(candidate) >= manyPieces;
}

KitePlace whenResting(const Candidate &candidate, const Question &question)
{
    const catalogue::Activity &activity = *candidate.activity;
    if (question.child.energyLimited && activity.energy == Energy::High)
        return KitePlace::Never;
    if (isLongFingerWork(activity) || activity.wordsNeeded == Words::Many)
        return KitePlace::HeldBack;
    return KitePlace::Open;
}

KitePlace whenWhirling(const Candidate &candidate, const Question &question)
{
    constexpr catalogue::TagSet tooMuch{Tag::Sharp, Tag::Elastic, Tag::Straw, Tag::Foam, Tag::Coin};
    const catalogue::Activity &activity = *candidate.activity;
    if (activity.effect == Effect::Alerting || !(candidate.cautions & tooMuch).empty() ||
        activity.wordsNeeded == Words::Many || leavesBusier(recordOf(question, activity.id)))
        return KitePlace::Never;
    if (hasManySmallPieces(candidate) || candidate.cautions.has(Tag::Balloon))
        return KitePlace::HeldBack;
    return KitePlace::Open;
}

KitePlace byKite(const Candidate &candidate, const Question &question)
{
    if (question.kite == checkin::Kite::Resting)
        return whenResting(candidate, question);
    if (question.kite == checkin::Kite::Whirling)
        return whenWhirling(candidate, question);
    const bool isNewOne = isNew(recordOf(question, candidate.activity->id));
    if (question.kite == checkin::Kite::Clouds && isNewOne)
        return KitePlace::HeldBack;
    return KitePlace::Open;
}

} // namespace

KitePlace kitePlaceOf(const Candidate &candidate, const Question &question)
{
    const catalogue::Activity &activity = *candidate.activity;
    if (question.pastBedtimeHour && activity.effect == Effect::Alerting)
        return KitePlace::Never;
    const KitePlace place = byKite(candidate, question);
    const bool tiring = question.child.energyLimited && activity.energy == Energy::High;
    return place == KitePlace::Open && tiring ? KitePlace::HeldBack : place;
}

} // namespace lidlark::rotation
