#include "core/box/item_readings.h"

#include "core/box/item_removals.h"
#include "core/box/sides.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Meetings;

/// No family disagrees about more plays than this at once; a hostile set of events costs no more.
constexpr std::size_t mostChoices = 4096;

std::vector<std::vector<Relation>> relationsOf(const OpenMatters &matters, const Meetings &meetings)
{
    std::vector<std::vector<Relation>> relations;
    for (const Event *count : matters.basis.counts) {
        std::vector<Relation> &row = relations.emplace_back();
        for (const Change &change : matters.changes)
            row.push_back(relationTo(count, *change.first, meetings));
    }
    return relations;
}

std::vector<std::vector<Relation>> removalRelationsOf(const OpenMatters &matters,
                                                      const Meetings &meetings)
{
    std::vector<std::vector<Relation>> relations;
    for (const Event *count : matters.basis.counts) {
        std::vector<Relation> &row = relations.emplace_back();
        for (const Event *removal : matters.removals)
            row.push_back(relationTo(count, *removal, meetings));
    }
    return relations;
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

Reading startOf(const OpenMatters &matters, std::size_t count, bool hopeful)
{
    Reading reading;
    reading.basis = matters.basis.counts[count];
    reading.hopeful = hopeful;
    for (std::size_t i = 0; i < matters.changes.size(); ++i) {
        const Relation relation = matters.relations[count][i];
        const bool open = hopeful == matters.changes[i].brings();
        reading.after.push_back(relation == Relation::Open ? open : relation == Relation::After);
    }
    for (std::size_t i = 0; i < matters.removals.size(); ++i) {
        const Relation relation = matters.removalRelations[count][i];
        const bool after = relation == Relation::Open ? !hopeful : relation == Relation::After;
        (after ? reading.removalsAfter : reading.removalsBefore).push_back(matters.removals[i]);
    }
    return reading;
}

std::size_t indexOf(const OpenMatters &matters, const Event *count)
{
    const auto &counts = matters.basis.counts;
    return static_cast<std::size_t>(std::find(counts.begin(), counts.end(), count) -
                                    counts.begin());
}

Value mostCareful(const Change &change)
{
    Value value = change.values.front();
    value.gone = change.mostGone();
    for (const Value &other : change.values) {
        if (other.brought() < value.brought()) {
            value.found = other.found;
            value.countedIn = other.countedIn;
        }
    }
    return value;
}

bool leavesMore(const Value &a, const Value &b)
{
    return a.brought() - a.gone.total() > b.brought() - b.gone.total();
}

bool isJoined(std::size_t change, const std::vector<Group> &groups)
{
    return std::any_of(groups.begin(), groups.end(), [change](const Group &group) {
        return std::any_of(group.begin(), group.end(),
                           [change](const Entry &entry) { return entry.change == change; });
    });
}

/// Every way to choose one value for each change that may leave most. Where a change is joined with
/// no other, that is the value that leaves most by itself.
std::vector<std::vector<Value>> choicesOf(const OpenMatters &matters)
{
    std::vector<std::vector<Value>> choices{{}};
    for (std::size_t i = 0; i < matters.changes.size(); ++i) {
        std::vector<Value> values = matters.changes[i].values;
        std::stable_sort(values.begin(), values.end(), leavesMore);
        const bool one =
            !isJoined(i, matters.doubles.possible) || choices.size() * values.size() > mostChoices;
        if (one)
            values.resize(1);
        std::vector<std::vector<Value>> longer;
        for (const std::vector<Value> &begun : choices) {
            for (const Value &value : values) {
                longer.push_back(begun);
                longer.back().push_back(value);
            }
        }
        choices = std::move(longer);
    }
    return choices;
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
    matters.relations = relationsOf(matters, meetings);
    matters.removalRelations = removalRelationsOf(matters, meetings);
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

Reading carefulReading(const OpenMatters &matters, const Event *count)
{
    Reading reading = startOf(matters, indexOf(matters, count), false);
    for (const Change &change : matters.changes)
        reading.values.push_back(mostCareful(change));
    countOnce(reading, matters.doubles.answered);
    return reading;
}

std::vector<Reading> hopefulReadings(const OpenMatters &matters, const Event *count)
{
    std::vector<Reading> readings;
    for (const std::vector<Value> &values : choicesOf(matters)) {
        Reading reading = startOf(matters, indexOf(matters, count), true);
        reading.values = values;
        countOnce(reading, matters.doubles.possible);
        readings.push_back(std::move(reading));
    }
    return readings;
}

Ends endsOf(int packed, const OpenMatters &matters, const journal::Seen &seen)
{
    Ends ends;
    bool first = true;
    for (const Event *count : matters.basis.counts) {
        const Tally careful =
            tallyOf(packed, matters.changes, carefulReading(matters, count), seen);
        if (first || careful.inBox < ends.careful.inBox) {
            ends.careful = careful;
            ends.carefulBasis = count;
        }
        for (const Reading &reading : hopefulReadings(matters, count)) {
            const Tally hopeful = tallyOf(packed, matters.changes, reading, seen);
            if (first || hopeful.inBox > ends.hopeful.inBox)
                ends.hopeful = hopeful;
            first = false;
        }
    }
    return ends;
}

} // namespace lidlark::box
