#include "core/usecase/child_goals.h"

#include "core/store/box_repository.h"
#include "core/store/event_repository.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

Result<std::optional<journal::Seen>> seenIn(store::EventRepository &events,
                                            const journal::Lane &lane)
{
    auto mets = events.ofSubject({lane, "met"});
    if (mets)
        mets = events.counting(*std::move(mets));
    if (!mets)
        return mets.error();
    return std::optional<journal::Seen>(std::in_place, *mets);
}

Day firstAgreed(const goals::GoalRecord &record)
{
    return record.versions.front().goal.agreedOn;
}

} // namespace

Result<std::vector<goals::GoalRecord>> childGoals(Workplace &workplace,
                                                  const std::string &childAlias)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const journal::Lane lane{journal::LaneKind::Goals, box->id.value};
    store::EventRepository events(workplace.database);
    const auto subjects = events.subjectsOf(lane);
    const auto seen = seenIn(events, lane);
    if (!subjects || !seen)
        return subjects ? seen.error() : subjects.error();
    std::vector<goals::GoalRecord> records;
    for (const store::LaneSubject &subject : *subjects) {
        if (!subject.subject.starts_with("goal:"))
            continue;
        const auto said = events.standingOfSubject(subject);
        if (!said)
            return said.error();
        auto record = goals::foldGoal(*said, **seen);
        if (record && record->child == box->child)
            records.push_back(*std::move(record));
    }
    std::ranges::stable_sort(records, {}, firstAgreed);
    return records;
}

Result<goals::GoalRecord> childGoal(Workplace &workplace, const std::string &childAlias,
                                    const std::string &goal)
{
    const auto records = childGoals(workplace, childAlias);
    if (!records)
        return records.error();
    const auto found = std::ranges::find_if(*records, [&goal](const goals::GoalRecord &record) {
        return record.current().goal.id == goal;
    });
    if (found == records->end())
        return Error{ErrorCode::NotFound, "this goal"};
    return *found;
}

} // namespace lidlark::usecase
