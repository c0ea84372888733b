#include <QtTest>

#include "core/workbench/readiness.h"

#include "tests/support/phone.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace lidlark;
using namespace lidlark::workbench;
using journal::Event;
using journal::Kind;

namespace {

const std::vector<std::string> people{"Morven", "Callum", "Ishbel"};

KeptBox specialBox()
{
    KeptBox box{{"K1", "Anya", {}, {{{"loops"}, 6, {}}, {{"scissors"}, 1, {}}}}, {}, false};
    box.personal.hand = Hand::Left;
    return box;
}

/// One thing that one person does, on a phone of their own.
struct Step {
    int who = 0;
    int what = 0; ///< 0, 1 pack; 2 take out; 3, 4 look over; 5 meet.
    int line = 0;
    int other = 0; ///< Whose events arrive, for a meeting.
};

rc::Gen<Step> anyStep()
{
    return rc::gen::construct<Step>(rc::gen::inRange(0, 3), rc::gen::inRange(0, 6),
                                    rc::gen::inRange(0, 2), rc::gen::inRange(0, 3));
}

/// Enough steps for two lines to be packed, looked over and packed again.
rc::Gen<std::vector<Step>> anyHistory()
{
    return rc::gen::container<std::vector<Step>>(60, anyStep());
}

/// Three phones, each with the events it holds.
class Packers
{
public:
    void take(const Step &step)
    {
        if (step.what == 5)
            meet(step.who, step.other);
        else
            mark(step.who, step.line,
                 step.what < 2   ? Mark::Packed
                 : step.what < 3 ? Mark::NotPacked
                                 : Mark::SecondLook);
    }

    void meet(int who, int other)
    {
        std::map<std::string, std::uint64_t> covered;
        for (const Event &event : m_held[other]) {
            if (std::ranges::find(m_held[who], event) == m_held[who].end())
                m_held[who].push_back(event);
        }
        for (const Event &event : m_held[who])
            covered[event.device.value] = std::max(covered[event.device.value], event.counter);
        write(who, Kind::Met, journal::metFields(covered));
    }

    void mark(int who, int line, Mark what)
    {
        const BoxPart part = specialBox().box.parts[static_cast<std::size_t>(line)];
        MarkSaid said{{"b"}, "K1", part.item, what, part.pieces, Hand::Left};
        if (what == Mark::SecondLook) {
            const PackBox box = boxOn(who);
            for (const PackedBy &packed : box.lines[static_cast<std::size_t>(line)].packed)
                said.of.insert(packed.identity);
        }
        write(who, Kind::PackMark, fieldsOf(said));
    }

    /// Who has heard everything packs both lines, and another one looks them over.
    void finish()
    {
        meet(0, 1);
        meet(0, 2);
        mark(0, 0, Mark::Packed);
        mark(0, 1, Mark::Packed);
        meet(1, 0);
        mark(1, 0, Mark::SecondLook);
        mark(1, 1, Mark::SecondLook);
    }

    [[nodiscard]] const std::vector<Event> &heldBy(int who) const { return m_held.at(who); }

    static PackBox boxOf(const std::vector<Event> &events)
    {
        return packBoxOf(specialBox(), nullptr, foldMarks(events, journal::Seen(events)),
                         test::realCatalogue(), {});
    }
    [[nodiscard]] PackBox boxOn(int who) const { return boxOf(m_held.at(who)); }

private:
    void write(int who, Kind kind, std::string fields)
    {
        Event event;
        event.lane = {journal::LaneKind::Clinic, "clinic"};
        event.device = {"d-" + people[static_cast<std::size_t>(who)]};
        event.counter = ++m_counters[who];
        event.instant = {1'000'000 + 1'000 * ++m_now, 0};
        event.author = people[static_cast<std::size_t>(who)];
        event.kind = kind;
        event.fields = std::move(fields);
        m_held[who].push_back(event);
    }

    std::map<int, std::vector<Event>> m_held{{0, {}}, {1, {}}, {2, {}}};
    std::map<int, std::uint64_t> m_counters;
    std::int64_t m_now = 0;
};

/// The rule again, said plainly, for people who tell each other everything at once.
struct PlainLine {
    int packedBy = -1;
    int lookedBy = -1;

    void take(const Step &step)
    {
        if (step.what < 2) {
            packedBy = step.who;
            lookedBy = -1;
        } else if (step.what < 3) {
            packedBy = lookedBy = -1;
        } else if (packedBy >= 0 && packedBy != step.who) {
            lookedBy = step.who;
        }
    }
    [[nodiscard]] bool isReady() const { return packedBy >= 0 && lookedBy >= 0; }
};

} // namespace

/// job.md T4: no special box can be "ready" without the second tick.
class TestSecondLook : public QObject
{
    Q_OBJECT

private slots:
    void whoTellEachOtherEverythingAreJudgedByThePlainRule()
    {
        int ready = 0;
        QVERIFY(rc::check("plain rule", [&ready] {
            Packers packers;
            PlainLine lines[2];
            for (const Step &step : *anyHistory()) {
                if (step.what == 5)
                    continue;
                packers.take(step);
                lines[step.line].take(step);
                for (const auto &[from, to] : {std::pair{step.who, (step.who + 1) % 3},
                                               std::pair{step.who, (step.who + 2) % 3}})
                    packers.meet(to, from);
                const PackBox box = packers.boxOn((step.who + 1) % 3);
                RC_ASSERT(box.isReady() == (lines[0].isReady() && lines[1].isReady()));
                ready += box.isReady() ? 1 : 0;
            }
        }));
        QVERIFY(ready > 0);
    }

    /// However they meet: each line of a ready box was looked over by somebody who did not pack it,
    /// as its events say, read one by one.
    void noLineOfAReadyBoxWasLookedOverByItsPacker()
    {
        int ready = 0;
        QVERIFY(rc::check("second person", [&ready] {
            Packers packers;
            const std::vector<Step> history = *anyHistory();
            for (const Step &step : history) {
                packers.meet(step.who, step.other); // now and then nobody but oneself
                packers.take(step);
            }
            if (!history.empty() && history.front().who == 0)
                packers.finish(); // so that whatever chance there is, some boxes are ready
            for (int who = 0; who < 3; ++who) {
                const PackBox box = packers.boxOn(who);
                if (!box.isReady())
                    continue;
                ++ready;
                for (const PackLine &line : box.lines) {
                    RC_ASSERT(!line.packed.empty());
                    for (const PackedBy &packed : line.packed)
                        RC_ASSERT(packed.who != line.lookedBy);
                    const bool looked =
                        std::ranges::any_of(packers.heldBy(who), [&line](const Event &event) {
                            const auto said = readMark(event);
                            return said && said->mark == Mark::SecondLook &&
                                   said->item == line.item && event.author == line.lookedBy;
                        });
                    RC_ASSERT(looked);
                }
            }
        }));
        QVERIFY(ready > 0);
    }

    void onePersonAloneIsNeverEnough()
    {
        QVERIFY(rc::check("one person", [] {
            Packers packers;
            for (Step step : *anyHistory()) {
                step.who = step.other = 1;
                packers.take(step);
                RC_ASSERT(!packers.boxOn(1).isReady());
            }
        }));
    }

    /// events.md 1: any order, any repetition, the same state.
    void anyOrderIsTheSame()
    {
        QVERIFY(rc::check("any order", [] {
            Packers packers;
            for (const Step &step : *anyHistory())
                packers.take(step);
            packers.meet(0, 1);
            packers.meet(0, 2);
            std::vector<Event> shuffled = packers.heldBy(0);
            for (std::size_t i = shuffled.size(); i > 1; --i)
                std::swap(shuffled[i - 1], shuffled[*rc::gen::inRange<std::size_t>(0, i)]);
            RC_ASSERT(Packers::boxOf(shuffled) == packers.boxOn(0));
        }));
    }
};

QTEST_GUILESS_MAIN(TestSecondLook)
#include "tst_second_look.moc"
