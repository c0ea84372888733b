#include <QtTest>

#include <rapidcheck.h>

#include "core/store/item_reading.h"
#include "core/store/projector.h"
#include "core/store/recording.h"
#include "tests/core/box/random_history.h"

#include <algorithm>
#include <memory>
#include <random>

using namespace lidlark;
using namespace lidlark::store;
using namespace lidlark::test;
using journal::Event;

namespace {

/// A store that takes in events as they come.
class Receiver
{
public:
    Receiver() : m_database(*Database::open(":memory:"))
    {
        (void)DeviceRepository(m_database).setDevice(m_device);
    }

    /// One exchange: all of them at once, or nothing.
    bool receive(const std::vector<Event> &events)
    {
        Result<Recording> recording = Recording::begin(m_database, m_device, m_clock);
        if (!recording)
            return false;
        for (const Event &event : events) {
            if (!recording->receive(event))
                return false;
        }
        return recording->commit().ok();
    }

    /// Everything that is kept of the item, as text.
    std::string rows()
    {
        const auto items = readItems(m_database, {"b-fin"});
        std::string text;
        for (const ItemRow &row : *items)
            text += textOf(row);
        return text;
    }

    bool matchesRefold()
    {
        const auto matches = Projector(m_database).matchesRefold();
        return matches && *matches;
    }

private:
    static std::string textOf(const ItemRow &row)
    {
        std::string text = row.item.value + ' ' + std::to_string(row.low) + ' ' +
                           std::to_string(row.high) + ' ' + std::to_string(row.out) + '\n';
        for (const box::DatedUse &use : row.uses)
            text += toText(use.day) + ' ' + std::to_string(use.pieces) + '\n';
        for (const box::Arrival &arrival : row.arrivals)
            text += toText(arrival.day) + ' ' + std::to_string(arrival.pieces) + '\n';
        for (const box::Question &question : row.questions)
            text += question.id + ' ' + question.answer + ' ' + question.answeredBy + '\n';
        for (const box::Request &request : row.requests)
            text += std::to_string(request.round) + request.stepBy + '\n';
        return text;
    }

    Device m_device{{"d-reader"}, "Reader", Role::Parent, {"h-fin"}};
    StillClock m_clock{islandTime()};
    Database m_database;

    static std::int64_t islandTime() { return 20'000 * dayMs; }
};

std::vector<Event> shuffled(std::vector<Event> events, std::mt19937 &random)
{
    std::shuffle(events.begin(), events.end(), random);
    return events;
}

} // namespace

/// events.md 1 and 12, on real stores: any order, any repetition, and the same rows after every
/// equal set of events.
class TestAnyDelivery : public QObject
{
    Q_OBJECT

private slots:
    void equalSetsGiveEqualRowsAllAlong()
    {
        QVERIFY(rc::check("any delivery", [] {
            FivePhones phones;
            for (const Act &act : *anyActs())
                phones.act(act);
            std::mt19937 random(*rc::gen::arbitrary<std::uint32_t>());
            const std::vector<Event> all = shuffled(phones.all(), random);
            Receiver one;
            Receiver other;
            Receiver late;
            std::vector<Event> sofar;
            constexpr std::size_t parcels = 4;
            for (std::size_t parcel = 0; parcel < parcels; ++parcel) {
                const auto from =
                    all.begin() + static_cast<std::ptrdiff_t>(all.size() * parcel / parcels);
                const auto to =
                    all.begin() + static_cast<std::ptrdiff_t>(all.size() * (parcel + 1) / parcels);
                const std::vector<Event> news(from, to);
                sofar.insert(sofar.end(), news.begin(), news.end());
                RC_ASSERT(one.receive(news));
                RC_ASSERT(other.receive(shuffled(sofar, random))); // with everything known again
                RC_ASSERT(one.rows() == other.rows());
            }
            RC_ASSERT(late.receive(shuffled(all, random)));
            RC_ASSERT(late.rows() == one.rows());
            RC_ASSERT(one.matchesRefold());
            RC_ASSERT(late.matchesRefold());
        }));
    }
};

QTEST_APPLESS_MAIN(TestAnyDelivery)
#include "tst_any_delivery.moc"
