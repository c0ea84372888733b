#include "core/rotation/kite_roles.h"

#include "core/rotation/familiarity.h"
#include "core/rotation/goal_link.h"
#include "core/rotation/kite_rules.h"

#include <algorithm>

namespace lidlark::rotation {

namespace {

using catalogue::Effect;
using catalogue::Position;
using catalogue::Skill;
using catalogue::Space;

/// Played so seldom that it is still being learnt: the first two or three times with a skill
/// (development.md g, rule 3).
constexpr int fewPlays = 2;
constexpr int shortPlayMinutes = 5;
constexpr int fewPieces = 3;

/// Muscle work against a load: feeling push and pull.
bool isPushPull(const Candidate &candidate)
{
    return candidate.activity->effect == Effect::Either && trains(candidate, Skill::Pro);
}

bool canBeSeated(const catalogue::Activity &activity)
{
    return std::ranges::any_of(activity.positions, [](Position position) {
        return position == Position::Lap || position == Position::Chair ||
               position == Position::Wheelchair;
    });
}

KiteRoles whenResting(const Candidate &candidate, const Question &question, bool friendly)
{
    const catalogue::Activity &activity = *candidate.activity;
    const bool lowEnough =
        !question.child.energyLimited || activity.energy == catalogue::Energy::Low;
    return {activity.effect == Effect::Alerting && lowEnough &&
                activity.minutes.play <= shortPlayMinutes &&
                activity.wordsNeeded != catalogue::Words::Many,
            isPushPull(candidate), friendly && canBeSeated(activity) && activity.hands <= 1};
}

KiteRoles whenSteady(const Candidate &candidate, const Question &question, bool friendly)
{
    const Record &record = recordOf(question, candidate.activity->id);
    return {goalLinkOf(*candidate.activity, question.child).points > 0, record.plays <= fewPlays,
            friendly};
}

KiteRoles whenWhirling(const Candidate &candidate, bool friendly)
{
    const catalogue::Activity &activity = *candidate.activity;
    const bool settling = activity.effect == Effect::Settling;
    const bool big = activity.space == Space::Mat || activity.space == Space::Room;
    const bool breath = candidate.cautions.has(catalogue::Tag::Breath);
    return {isPushPull(candidate), settling && (big || breath),
            settling && friendly && boxPieces(candidate) <= fewPieces};
}

KiteRoles whenClouded(const Candidate &candidate, bool friendly)
{
    return {friendly, candidate.activity->effect == Effect::Either,
            candidate.activity->space != Space::Table};
}

} // namespace

KiteRoles kiteRolesOf(const Candidate &candidate, const Question &question)
{
    if (!question.kite || kitePlaceOf(candidate, question) != KitePlace::Open)
        return {};
    const bool friendly = isKnownFriend(recordOf(question, candidate.activity->id));
    switch (*question.kite) {
    case checkin::Kite::Resting:
        return whenResting(candidate, question, friendly);
    case checkin::Kite::Steady:
        return whenSteady(candidate, question, friendly);
    case checkin::Kite::Whirling:
        return whenWhirling(candidate, friendly);
    case checkin::Kite::Clouds:
        return whenClouded(candidate, friendly);
    case checkin::Kite::Bag:
        break;
    }
    return {};
}

int kiteFitOf(const KiteRoles &roles)
{
    if (roles[0] || roles[1])
        return 30;
    return roles[2] ? 20 : 0;
}

} // namespace lidlark::rotation
