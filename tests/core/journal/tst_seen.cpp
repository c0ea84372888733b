#include <QtTest>

#include "core/journal/latest.h"
#include "core/journal/seen.h"

using namespace lidlark;
using namespace lidlark::journal;

namespace {

const Lane lane{LaneKind::Box, "b-fin"};

Event place(const char *device, std::uint64_t counter, std::int64_t ms)
{
    Event event;
    event.lane = lane;
    event.device = {device};
    event.counter = counter;
    event.instant = {ms, 0};
    event.kind = Kind::Place;
    event.fields = "{}";
    return event;
}

Event met(const char *device, std::uint64_t counter,
          const std::map<std::string, std::uint64_t> &covered)
{
    Event event = place(device, counter, 0);
    event.kind = Kind::Met;
    event.fields = metFields(covered);
    return event;
}

} // namespace

/// Guards events.md 2 ("seen") and 3.1, 3.2 (what replaces what).
class TestSeen : public QObject
{
    Q_OBJECT

private slots:
    void onOneDeviceTheCounterIsTheOrderWhateverTheClockSays()
    {
        const Event first = place("ruth", 1, 9'000'000);
        const Event second = place("ruth", 2, 5); // the clock was set back
        const Seen seen(std::vector<Event>{first, second});
        QVERIFY(seen.saw(second, first));
        QVERIFY(!seen.saw(first, second));
    }

    void aMetCoversWhatWasWrittenUpToItsCounterAndNothingLater()
    {
        const std::vector<Event> events{place("gran", 1, 10), place("gran", 2, 20),
                                        met("ruth", 1, {{"gran", 1}}), place("ruth", 2, 5)};
        const Seen seen(events);
        QVERIFY(seen.saw(events[3], events[0]));
        QVERIFY(seen.concurrent(events[3], events[1]));
    }

    /// A copied phone, or a lie: else each would be later than the other, and whoever asks which
    /// is the last would never come to an end.
    void twoThatSayToHaveSeenEachOtherHaveNot()
    {
        const std::vector<Event> events{met("gran", 1, {{"ruth", 9}}), place("gran", 2, 20),
                                        met("ruth", 1, {{"gran", 9}}), place("ruth", 2, 5)};
        const Seen seen(events);
        QVERIFY(seen.concurrent(events[1], events[3]));
        const Event *latest = latestOf(events, Kind::Place, seen);
        QVERIFY(latest != nullptr);
        QCOMPARE(latest->device.value, std::string("gran"));
    }

    void anEventBeforeTheMetHadSeenNothing()
    {
        const std::vector<Event> events{place("gran", 1, 10), place("ruth", 1, 50),
                                        met("ruth", 2, {{"gran", 1}})};
        const Seen seen(events);
        QVERIFY(seen.concurrent(events[1], events[0]));
    }

    void seeingGoesThroughChains()
    {
        // Aaron met Gran; Ruth met Aaron after that, and so has seen Gran's event.
        const std::vector<Event> events{place("gran", 1, 10), met("aaron", 1, {{"gran", 1}}),
                                        place("aaron", 2, 20), met("ruth", 1, {{"aaron", 2}}),
                                        place("ruth", 2, 30)};
        const Seen seen(events);
        QVERIFY(seen.saw(events[4], events[0]));
        QVERIFY(!seen.saw(events[0], events[4]));
    }

    void twoEventsWithOneCounterAreConcurrent()
    {
        const Event a = place("ruth", 4, 10);
        const Event b = place("ruth", 4, 20); // a copied phone
        const Seen seen(std::vector<Event>{a, b});
        QVERIFY(seen.concurrent(a, b));
    }

    void aMetThatClaimsTheFutureOfItsOwnDeviceEndsAndHurtsNobody()
    {
        const std::vector<Event> events{met("ruth", 1, {{"ruth", 99}, {"gran", 1}}),
                                        met("gran", 1, {{"ruth", 1}, {"gran", 99}}),
                                        place("ruth", 2, 5)};
        const Seen seen(events);
        QVERIFY(!seen.saw(events[2], events[2]));
    }

    void whatHasSeenAValueReplacesItEvenWithAnEarlierClock()
    {
        const std::vector<Event> events{place("gran", 1, 900), met("ruth", 1, {{"gran", 1}}),
                                        place("ruth", 2, 5)};
        QCOMPARE(latestOf(events, Kind::Place, Seen(events)), &events[2]);
    }

    void amongConcurrentValuesTheLaterInstantWinsInAnyOrderOfArrival()
    {
        std::vector<Event> events{place("gran", 1, 900), place("ruth", 1, 950)};
        QCOMPARE(latestOf(events, Kind::Place, Seen(events))->device.value, std::string("ruth"));
        std::swap(events[0], events[1]);
        QCOMPARE(latestOf(events, Kind::Place, Seen(events))->device.value, std::string("ruth"));
    }
};

QTEST_APPLESS_MAIN(TestSeen)
#include "tst_seen.moc"
