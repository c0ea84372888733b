#include "core/box/open_matters.h"

#include "core/box/item_removals.h"
#include "core/box/sides.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Meetings;

/// How each of @p events stands to each count of the basis.
std::vector<std::vector<Relation>>
relationsTo(const Basis &basis, const std::vector<const Event *> &events, const Meetings &meetings)
{
    std::vector<std::vector<Relation>> relations;
    for (const Event *count : basis.counts) {
        std::vector<Relation> &row = relations.emplace_back();
        for (const Event *event : events)
            row.push_back(relationTo(count, *event, meetings));
    }
    return relations;
}

std::vector<const Event *> firstsOf(const std::vector<Change> &changes)
{
    std::vector<const Event *> firsts;
    firsts.reserve(changes.size());
    for (const Change &change : changes)
        firsts.push_back(change.first);
    return firsts;
}

/// Several counts that say the same of the same: which was the last makes no difference.
bool countsAgree(const OpenMatters &matters)
{
    const std::vector<const Event *> &counts = matters.basis.counts;
    if (counts.size() < 2)
        return false;
    const Counted first = *readCounted(*counts.front());
    for (std::size_t i = 1; i < counts.size(); ++i) {
        const Counted other = *readCounted(*counts[i]);
        if (other.inBox != first.inBox || other.out != first.out ||
            matters.relations[i] != matters.relations.front() ||
            matters.removalRelations[i] != matters.removalRelations.front())
            return false;
    }
    return true;
}

void takeTheLast(OpenMatters &matters)
{
    matters.basis = {{matters.basis.counts.back()}, std::nullopt};
    matters.relations = {matters.relations.back()};
    matters.removalRelations = {matters.removalRelations.back()};
}

/// Which of the values that differ is right.
void askWhich(Change &change, const Answers &answers, std::vector<Question> &questions)
{
    if (change.values.size() < 2)
        return;
    std::vector<const Event *> events;
    std::vector<std::string> identities;
    for (const Value &value : change.values) {
        events.push_back(value.event);
        identities.push_back(journal::identityOf(*value.event));
    }
    Question question = questionOver(
        questionId(identities),
        change.round ? QuestionSort::WhichCountedIn : QuestionSort::WhichPutBack, events);
    answers.fillIn(question);
    questions.push_back(question);
    const auto chosen =
        std::find_if(change.values.begin(), change.values.end(), [&question](const Value &value) {
            return journal::identityOf(*value.event) == question.answer;
        });
    if (chosen == change.values.end())
        return;
    const Value value = *chosen;
    change.values.erase(chosen);
    change.setAside = std::move(change.values);
    change.values = {value};
}

/// Whether a change was before or after the count; asked only once it is known which count.
void askBeforeOrAfter(OpenMatters &matters, const Answers &answers)
{
    if (matters.basis.counts.size() != 1 || matters.basis.counts.front() == nullptr)
        return;
    for (std::size_t i = 0; i < matters.changes.size(); ++i) {
        Relation &relation = matters.relations.front()[i];
        if (relation != Relation::Open || matters.changes[i].isNothing())
            continue;
        const Question question =
            beforeOrAfter(*matters.basis.counts.front(), matters.changes[i], answers);
        matters.questions.push_back(question);
        if (!question.isOpen())
            relation = question.answer == "before" ? Relation::Covered : Relation::After;
    }
}

} // namespace

OpenMatters openMattersOf(std::span<const Event> events, const Meetings &meetings)
{
    OpenMatters matters;
    const Answers answers(events, meetings.seen);
    matters.changes = changesOf(events, meetings.seen);
    for (Change &change : matters.changes)
        askWhich(change, answers, matters.questions);
    matters.removals = takenOutOf(events);
    matters.basis = basisOf(events, answers, meetings);
    matters.relations = relationsTo(matters.basis, firstsOf(matters.changes), meetings);
    matters.removalRelations = relationsTo(matters.basis, matters.removals, meetings);
    if (countsAgree(matters))
        takeTheLast(matters);
    else if (matters.basis.question)
        matters.questions.push_back(*matters.basis.question);
    askBeforeOrAfter(matters, answers);
    const auto isClosed = [&matters](std::size_t a, std::size_t b) {
        return std::all_of(matters.relations.begin(), matters.relations.end(),
                           [a, b](const std::vector<Relation> &row) {
                               return row[a] == Relation::Covered && row[b] == Relation::Covered;
                           });
    };
    matters.doubles = doubleEntriesOf(matters.changes, answers, meetings, isClosed);
    matters.questions.insert(matters.questions.end(), matters.doubles.questions.begin(),
                             matters.doubles.questions.end());
    return matters;
}

} // namespace lidlark::box
