#include <QtTest>

#include "every_reading.h"
#include "random_history.h"

#include <algorithm>
#include <random>

using namespace lidlark;
using namespace lidlark::box;
using namespace lidlark::test;
using journal::Event;

namespace {

FivePhones livedThrough(const std::vector<Act> &acts)
{
    FivePhones phones;
    for (const Act &act : acts)
        phones.act(act);
    return phones;
}

/// What stands of them, in one order.
std::vector<Event> inOneOrder(std::vector<Event> events)
{
    events = journal::withoutTakenBack(std::move(events));
    std::sort(events.begin(), events.end(), writtenEarlier);
    return events;
}

/// What a phone holds after an exchange: its own first, each event once.
std::vector<Event> joined(std::vector<Event> events, const std::vector<Event> &received)
{
    std::set<std::string> known;
    for (const Event &event : events)
        known.insert(journal::identityOf(event));
    for (const Event &event : received) {
        if (known.insert(journal::identityOf(event)).second)
            events.push_back(event);
    }
    return events;
}

/// The product of the choices is walked through only where it is small enough to.
bool isSmall(const OpenMatters &matters)
{
    std::size_t readings = 2 * matters.basis.counts.size();
    for (std::size_t i = 0; i < matters.changes.size(); ++i) {
        readings *= matters.changes[i].values.size();
        readings *= matters.relations.front()[i] == Relation::Open ? 2 : 1;
    }
    for (const Relation relation : matters.removalRelations.front())
        readings *= relation == Relation::Open ? 2 : 1;
    for (std::size_t i = 0; i < matters.doubles.possible.size(); ++i)
        readings *= 2;
    return readings < 20'000;
}

} // namespace

/// Five phones, wrong clocks, any order: events.md 1, 6.4, 12.
class TestItemHistories : public QObject
{
    Q_OBJECT

private slots:
    /// events.md 6.4: "It holds for each reading of the open questions." The two ends that the
    /// ledger shows are the lowest and the highest of them all.
    void everyReadingConservesPiecesAndLiesBetweenTheEnds()
    {
        int several = 0;
        QVERIFY(rc::check("conservation", [&several] {
            const std::vector<Event> events = inOneOrder(livedThrough(*anyActs()).all());
            const journal::Meetings meetings(events);
            const OpenMatters matters = openMattersOf(events, meetings);
            RC_PRE(isSmall(matters));
            const ItemLedger ledger = fold(6, events);
            int lowest = ledger.hopeful.inBox;
            const int readings = EveryReading(matters).visit([&](const Reading &reading) {
                const Tally tally = tallyOf(6, matters.changes, reading, meetings.seen);
                RC_ASSERT(tally.conserved());
                RC_ASSERT(tally.inBox >= ledger.careful.inBox);
                RC_ASSERT(tally.inBox <= ledger.hopeful.inBox);
                lowest = std::min(lowest, tally.inBox);
            });
            several += readings > 2 ? 1 : 0;
            RC_ASSERT(ledger.careful.conserved());
            RC_ASSERT(ledger.hopeful.conserved());
        }));
        QVERIFY2(several > 10, "the histories left hardly anything open");
    }

    /// events.md 1: the fold reads the set; repetition and order of arrival change nothing.
    void anyOrderAndAnyRepetitionGiveTheSameLedger()
    {
        QVERIFY(rc::check("any order", [] {
            const std::vector<Event> events = livedThrough(*anyActs()).all();
            std::vector<Event> shuffled = events;
            const auto seed = *rc::gen::arbitrary<std::uint32_t>();
            std::mt19937 random(seed);
            std::shuffle(shuffled.begin(), shuffled.end(), random);
            RC_ASSERT(fold(6, events) == fold(6, shuffled));
        }));
    }

    /// The same box after every equal set, not only at the end: after every act two phones that
    /// then exchange all they hold, each in its own order, show the same.
    void phonesThatHoldTheSameShowTheSameAllAlong()
    {
        QVERIFY(rc::check("equal sets", [] {
            const std::vector<Act> acts = *anyActs();
            FivePhones phones;
            for (const Act &act : acts) {
                phones.act(act);
                const auto one = static_cast<std::size_t>(act.phone);
                const std::size_t other = (one + 1 + static_cast<std::size_t>(act.amount)) % 5;
                const auto mine = phones.eventsOf(one);
                const auto theirs = phones.eventsOf(other);
                RC_ASSERT(fold(6, joined(mine, theirs)) == fold(6, joined(theirs, mine)));
            }
        }));
    }

    /// Every question has an answer that the ledger takes, and once all are answered one number is
    /// left.
    void answeringEverythingLeavesOneNumber()
    {
        QVERIFY(rc::check("answers end the range", [] {
            std::vector<Event> events = livedThrough(*anyActs()).all();
            std::uint64_t counter = 0;
            for (int round = 0; round < 60; ++round) {
                const ItemLedger ledger = fold(6, events);
                const auto open =
                    std::find_if(ledger.questions.begin(), ledger.questions.end(),
                                 [](const Question &question) { return question.isOpen(); });
                if (open == ledger.questions.end())
                    break;
                Event event;
                event.lane = {journal::LaneKind::Box, "b-fin"};
                event.device = {"judge"};
                event.counter = ++counter;
                event.instant = {30'000 * dayMs + round, 0};
                event.kind = journal::Kind::Answer;
                event.author = "judge";
                const auto answers = answersOf(*open);
                event.fields = fieldsOf(Answered{
                    eyes, open->id, answers[static_cast<std::size_t>(round) % answers.size()]});
                events.push_back(event);
            }
            const journal::Meetings meetings(events);
            const std::vector<Event> ordered = inOneOrder(events);
            const OpenMatters matters = openMattersOf(ordered, meetings);
            const bool anyOpen =
                std::any_of(matters.questions.begin(), matters.questions.end(),
                            [](const Question &question) { return question.isOpen(); });
            RC_ASSERT(!anyOpen);
            // A removal that nobody can place beside a count is not asked about: a count ends it.
            RC_PRE(matters.removals.empty());
            const ItemLedger ledger = fold(6, events);
            RC_ASSERT(ledger.careful.inBox == ledger.hopeful.inBox);
        }));
    }
};

QTEST_APPLESS_MAIN(TestItemHistories)
#include "tst_item_histories.moc"
