#include "core/usecase/gradings.h"

#include "core/usecase/say_one.h"

namespace lidlark::usecase {

namespace {

bool standsIn(const catalogue::Activity &activity, const play::GradingUsed &used)
{
    return used.way == play::Way::AsWritten || play::lineFor(activity, used) != nullptr;
}

} // namespace

FirstGrading firstGradingOf(const Family &family, const catalogue::Activity &activity)
{
    const auto pinned = family.gradingPins.find(activity.id);
    if (pinned != family.gradingPins.end() && standsIn(activity, pinned->second))
        return {pinned->second, GradingFrom::Therapist};
    const auto last = family.gradings.find(activity.id);
    if (last != family.gradings.end() && standsIn(activity, last->second))
        return {last->second, GradingFrom::LastTime};
    return {};
}

Outcome keepGrading(Workplace &workplace, const Family &family, const ActivityId &activity,
                    const play::GradingUsed &used)
{
    if (workplace.device.role == store::Role::Guest || family.home.empty())
        return Done{};
    const auto kept = family.gradings.find(activity);
    const bool same =
        kept != family.gradings.end() ? kept->second == used : used.way == play::Way::AsWritten;
    if (same)
        return Done{};
    return sayOne(workplace, {journal::LaneKind::Home, family.home.value}, journal::Kind::Grading,
                  play::fieldsOf(family.child.id, activity, used));
}

Outcome pinGrading(Workplace &workplace, const std::string &childAlias, const ActivityId &activity,
                   const std::optional<play::GradingUsed> &pinned)
{
    if (workplace.device.role != store::Role::Therapist)
        return Error{ErrorCode::Invalid, "grading: only the therapist pins one"};
    const catalogue::Activity *entry = workplace.catalogue.activity(activity);
    if (entry == nullptr)
        return Error{ErrorCode::NotFound, "the activity " + activity.value};
    if (pinned && !standsIn(*entry, *pinned))
        return Error{ErrorCode::Invalid, "grading: " + activity.value + " has no such line"};
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    return sayOne(workplace, {journal::LaneKind::Box, box->id.value}, journal::Kind::GradingPin,
                  play::fieldsOfPin(activity, pinned));
}

} // namespace lidlark::usecase
