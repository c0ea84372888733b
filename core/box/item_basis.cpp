#include "core/box/item_basis.h"

#include "core/box/sides.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Meetings;

/// The one that is later than all the others by more than the margin; null: none is.
const Event *lastOf(const std::vector<const Event *> &counts, const Meetings &meetings)
{
    for (const Event *candidate : counts) {
        const bool last = std::all_of(counts.begin(), counts.end(), [&](const Event *other) {
            return other == candidate ||
                   meetings.orderOf(*candidate, *other) == Meetings::Order::After;
        });
        if (last)
            return candidate;
    }
    return nullptr;
}

} // namespace

Basis basisOf(std::span<const Event> events, const Answers &answers, const Meetings &meetings)
{
    std::vector<const Event *> counts;
    for (const Event &event : events) {
        if (readCounted(event))
            counts.push_back(&event);
    }
    std::vector<const Event *> standing = standingOf(counts, meetings.seen);
    if (standing.empty())
        return {{nullptr}, std::nullopt};
    if (const Event *last = lastOf(standing, meetings))
        return {{last}, std::nullopt};
    std::vector<std::string> identities;
    identities.reserve(standing.size());
    for (const Event *count : standing)
        identities.push_back(journal::identityOf(*count));
    Question question =
        questionOver(questionId(identities), QuestionSort::WhoCountedLast, standing);
    answers.fillIn(question);
    for (const Event *count : standing) {
        if (journal::identityOf(*count) == question.answer)
            return {{count}, question};
    }
    std::sort(standing.begin(), standing.end(),
              [](const Event *a, const Event *b) { return writtenEarlier(*a, *b); });
    return {standing, question};
}

Relation relationTo(const Event *count, const Event &event, const Meetings &meetings)
{
    if (count == nullptr)
        return Relation::After;
    switch (meetings.orderOf(event, *count)) {
    case Meetings::Order::Before:
        return Relation::Covered;
    case Meetings::Order::After:
        return Relation::After;
    case Meetings::Order::Open:
        break;
    }
    return Relation::Open;
}

Question beforeOrAfter(const Event &count, const Change &change, const Answers &answers)
{
    Question question =
        questionOver(questionId({journal::identityOf(count), journal::identityOf(*change.first)}),
                     QuestionSort::BeforeOrAfter, {&count, change.first});
    for (Side &side : question.sides) {
        if (side.isCount)
            continue;
        side.exceptions = change.mostGone();
        side.brings = change.brings();
        side.pieces = change.brings() ? change.leastBrought() : side.exceptions.total();
    }
    answers.fillIn(question);
    return question;
}

} // namespace lidlark::box
