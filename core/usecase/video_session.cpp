#include "core/usecase/video_session.h"

#include "core/store/event_repository.h"
#include "core/store/recording.h"
#include "core/usecase/menu_question.h"
#include "core/usecase/revision_state.h"
#include "core/usecase/said_of_plans.h"
#include "core/usecase/say_one.h"

#include <algorithm>
#include <tuple>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using journal::Lane;
using journal::LaneKind;
using workbench::VideoPlan;

Lane laneOf(const Family &family)
{
    return {LaneKind::Box, family.box.id.value};
}

/// Wherever the box is today: on the day, each thing is asked after by itself. Everybody of the
/// home may be in the room.
safety::Gated gatedForSession(const Family &family, const catalogue::Catalogue &catalogue, Day day)
{
    safety::BoxState box = boxStateOf(family, catalogue, day);
    box.here = true;
    const child::HomeSheet *home = family.sheet ? &*family.sheet : nullptr;
    const safety::Room room;
    return safety::admitAll({family.child, home, room, box, catalogue, day});
}

/// What is really used: swaps applied, where the gate lets the activity through on this phone.
workbench::UsesOf usesOf(const VideoPlan &plan, const Family &family,
                         const catalogue::Catalogue &catalogue)
{
    workbench::UsesOf uses = workbench::usesAsWritten(plan, catalogue);
    for (const safety::Admitted &admitted : gatedForSession(family, catalogue, plan.day).admitted) {
        if (const auto use = uses.find(admitted.activity().id); use != uses.end())
            use->second = admitted.items();
    }
    return uses;
}

bool isOnItsWay(const Family &family, const ItemId &item)
{
    const auto row = std::ranges::find(family.items, item, &store::ItemRow::item);
    return row != family.items.end() && row->expected > 0 && row->low == 0 &&
           !row->requests.empty() && row->requests.back().step != box::RequestStep::CountedIn;
}

bool isOnList(const Family &family, const ItemId &item)
{
    return family.revision && family.revision->revision.packed.contains(item);
}

std::optional<PlanProblem> problemOfItem(const catalogue::Activity &activity, const Family &family)
{
    for (const catalogue::ItemUse &use : activity.items) {
        if (use.source != catalogue::Source::Box || use.role != catalogue::Role::Must)
            continue;
        if (isToTakeOut(family, use.item))
            return PlanProblem{activity.id, NotInPlan::ToTakeOut, use.item, {}};
        if (!isOnList(family, use.item))
            return PlanProblem{activity.id, NotInPlan::NotOnList, use.item, {}};
        if (isOnItsWay(family, use.item))
            return PlanProblem{activity.id, NotInPlan::OnItsWay, use.item, {}};
    }
    return std::nullopt;
}

std::optional<PlanProblem> problemOf(const ActivityId &id, const VideoChoices &choices,
                                     const catalogue::Catalogue &catalogue, Day day)
{
    const catalogue::Activity *activity = catalogue.activity(id);
    if (activity == nullptr)
        return PlanProblem{id, NotInPlan::Unknown, {}, {}};
    if (!activity->videoOk)
        return PlanProblem{id, NotInPlan::NotOnVideo, {}, {}};
    const bool open = std::ranges::any_of(choices.open, [&id](const safety::Admitted &admitted) {
        return admitted.activity().id == id;
    });
    if (open)
        return std::nullopt;
    if (auto ofItem = problemOfItem(*activity, choices.family))
        return ofItem;
    PlanProblem problem{id, NotInPlan::HeldBack, {}, {}};
    for (const safety::HeldBack &held : gatedForSession(choices.family, catalogue, day).heldBack) {
        if (held.activity == activity)
            problem.reasons = held.reasons;
    }
    return problem;
}

Outcome mayPlan(const Workplace &workplace)
{
    if (workplace.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "a video plan"};
    return Done{};
}

VideoSession sessionFrom(const VideoPlan &plan, const std::map<ItemId, workbench::AtHand> &atHand,
                         const Family &family, const catalogue::Catalogue &catalogue)
{
    const auto uses = usesOf(plan, family, catalogue);
    VideoSession session{plan, workbench::partsNow(plan, uses, atHand),
                         workbench::thingsNeeded(plan, uses, atHand), false};
    session.listHasChanged = family.revision && family.revision->revision.number != plan.revision;
    return session;
}

Result<std::optional<VideoSession>> sessionOf(Workplace &workplace, const Family &family,
                                              const std::string &plan)
{
    auto plans = SaidOfPlans::open(workplace, laneOf(family));
    const auto said =
        plans ? plans->of(workbench::subjectOfPlan(plan)) : Result<SaidOfPlan>(plans.error());
    if (!said)
        return said.error();
    if (!said->plan)
        return std::optional<VideoSession>();
    return std::optional(sessionFrom(*said->plan, said->atHand, family, workplace.catalogue));
}

bool isToCome(const VideoPlan &plan, const HomeId &home, Day today)
{
    const bool elsewhere = !home.empty() && !plan.home.empty() && plan.home != home;
    return !plan.calledOff && plan.day >= today && !elsewhere;
}

} // namespace

Result<VideoChoices> videoChoices(Workplace &workplace, const std::string &childAlias, Day day)
{
    if (const Outcome allowed = mayPlan(workplace); !allowed)
        return allowed.error();
    auto family = loadFamily(workplace, childAlias);
    const auto today = store::todayOf(workplace.clock);
    if (!family || !today)
        return family ? today.error() : family.error();
    if (!family->revision)
        return Error{ErrorCode::Invalid, "lid list: the box has none"};
    if (day < today->day)
        return Error{ErrorCode::Invalid, "day: in the past"};
    const auto state = revisionStateOf(workplace, *family);
    if (!state)
        return state.error();
    VideoChoices choices{*std::move(family), 1, false, {}, {}};
    choices.revision = choices.family.revision->revision.number;
    choices.awaitsConfirmation = *state && !(*state)->isConfirmed();
    for (safety::Admitted &admitted :
         gatedForSession(choices.family, workplace.catalogue, day).admitted) {
        if (admitted.activity().videoOk)
            choices.open.push_back(std::move(admitted));
    }
    MenuRequest request;
    request.child = childAlias;
    request.day = day;
    const DayPart when{day, PartOfDay::Morning};
    choices.suggested = rotation::chooseArc(
        choices.open, questionFor(workplace, choices.family, request, when, *today));
    return choices;
}

std::vector<PlanProblem> problemsOf(const VideoPlan &plan, const VideoChoices &choices,
                                    const catalogue::Catalogue &catalogue)
{
    std::vector<PlanProblem> problems;
    for (const auto *list : {&plan.activities, &plan.spares}) {
        for (const ActivityId &id : *list) {
            if (auto problem = problemOf(id, choices, catalogue, plan.day))
                problems.push_back(*std::move(problem));
        }
    }
    return problems;
}

Result<std::string> planVideo(Workplace &workplace, const std::string &childAlias, VideoPlan plan)
{
    const auto choices = videoChoices(workplace, childAlias, plan.day);
    if (!choices)
        return choices.error();
    if (plan.activities.empty() || plan.activities.size() > workbench::mostPlayed)
        return Error{ErrorCode::Invalid, "activities: one to three"};
    if (plan.spares.size() > workbench::mostSpares)
        return Error{ErrorCode::Invalid, "spares: two at most"};
    const auto problems = problemsOf(plan, *choices, workplace.catalogue);
    if (!problems.empty())
        return Error{ErrorCode::Invalid, "activity: " + problems.front().activity.value};
    if (plan.id.empty())
        plan.id = workplace.entropy.freshId();
    plan.home = choices->family.home;
    plan.revision = choices->revision;
    journal::Event event;
    event.kind = Kind::VideoPlan;
    event.fields = workbench::fieldsOf(plan);
    if (!workbench::readVideoPlan(event)) // the same bounds for all who write and read
        return Error{ErrorCode::Invalid, "plan: the day, the time, or an activity twice"};
    if (const Outcome said =
            sayOne(workplace, laneOf(choices->family), Kind::VideoPlan, event.fields);
        !said)
        return said.error();
    return plan.id;
}

Outcome callOffVideo(Workplace &workplace, const std::string &childAlias, const std::string &plan)
{
    if (Outcome allowed = mayPlan(workplace); !allowed)
        return allowed;
    const auto family = loadFamily(workplace, childAlias);
    const auto session = family ? sessionOf(workplace, *family, plan)
                                : Result<std::optional<VideoSession>>(family.error());
    if (!session)
        return session.error();
    if (!*session)
        return Error{ErrorCode::NotFound, "the video plan"};
    VideoPlan off = (*session)->plan;
    off.calledOff = true;
    return sayOne(workplace, laneOf(*family), Kind::VideoPlan, workbench::fieldsOf(off));
}

Result<std::vector<VideoSession>> videoSessions(Workplace &workplace, const Family &family,
                                                Day today)
{
    const Lane lane = laneOf(family);
    const auto subjects = store::EventRepository(workplace.database).subjectsOf(lane);
    if (!subjects)
        return subjects.error();
    std::optional<SaidOfPlans> plans; // most boxes have none, and nothing is read for them
    std::vector<VideoSession> sessions;
    for (const store::LaneSubject &subject : *subjects) {
        if (!subject.subject.starts_with(workbench::subjectOfPlan("")))
            continue;
        if (!plans) {
            auto opened = SaidOfPlans::open(workplace, lane);
            if (!opened)
                return opened.error();
            plans.emplace(*std::move(opened));
        }
        const auto said = plans->of(subject.subject);
        if (!said)
            return said.error();
        // The gate is asked for what is to come alone: plans of a year stay in the lane.
        if (said->plan && isToCome(*said->plan, workplace.device.home, today))
            sessions.push_back(sessionFrom(*said->plan, said->atHand, family, workplace.catalogue));
    }
    std::ranges::sort(sessions, [](const VideoSession &a, const VideoSession &b) {
        return std::tie(a.plan.day, a.plan.minuteOfDay, a.plan.id) <
               std::tie(b.plan.day, b.plan.minuteOfDay, b.plan.id);
    });
    return sessions;
}

Outcome sayAtHand(Workplace &workplace, const std::string &childAlias, const std::string &plan,
                  const ItemId &item, bool here)
{
    if (workplace.device.role == store::Role::Guest)
        return Error{ErrorCode::NotAllowed, "a video session"};
    const auto family = loadFamily(workplace, childAlias);
    const auto session = family ? sessionOf(workplace, *family, plan)
                                : Result<std::optional<VideoSession>>(family.error());
    if (!session)
        return session.error();
    const bool needed =
        *session && std::ranges::any_of((*session)->things, [&](const workbench::ThingNeeded &t) {
            return t.item == item;
        });
    if (!needed)
        return Error{ErrorCode::NotFound, "a thing of that session"};
    return sayOne(workplace, laneOf(*family), Kind::HaveReady,
                  workbench::fieldsOfAtHand(plan, item, here));
}

} // namespace lidlark::usecase
