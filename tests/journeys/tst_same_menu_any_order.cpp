#include <QtTest>

#include "core/store/recording.h"
#include "core/usecase/check_in.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/plan_week.h"
#include "core/usecase/play_activity.h"

#include "tests/support/phone.h"

#include <algorithm>
#include <random>

using namespace lidlark;
using namespace lidlark::test;

namespace {

constexpr int histories = 10;
constexpr int daysAHistory = 100;

/// Chance with a seed.
class Dice
{
public:
    explicit Dice(int seed) : m_source(static_cast<std::uint32_t>(seed)) {}
    int below(int limit) { return static_cast<int>(m_source() % static_cast<unsigned>(limit)); }
    template <class List> void shuffle(List &list)
    {
        std::shuffle(list.begin(), list.end(), m_source);
    }

private:
    std::mt19937 m_source;
};

/// What may happen in a home on one evening.
void liveADay(usecase::Workplace &workplace, Dice &dice)
{
    usecase::MenuRequest request;
    request.child = "Fin";
    const auto today = usecase::suggestToday(workplace, request);
    QVERIFY(today.ok());
    if (dice.below(4) > 0)
        QVERIFY(usecase::markOffered(workplace, *today).ok());
    if (today->menu.offers.empty() || dice.below(4) == 0)
        return;
    const auto &offers = today->menu.offers;
    const auto &picked =
        offers[static_cast<std::size_t>(dice.below(static_cast<int>(offers.size())))];
    const catalogue::Activity &activity = picked.admitted.activity();
    const auto play = usecase::startPlay(workplace, {"Fin", activity.id, {}, std::nullopt});
    QVERIFY(play.ok());
    QVERIFY(usecase::stopPlay(workplace, *play, {}, {}).ok());
    if (dice.below(2) == 0)
        (void)usecase::noticePhrase(workplace, *play, static_cast<play::Phrase>(dice.below(3)));
    if (dice.below(5) == 0)
        (void)usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, 3 + dice.below(4)}});
    if (dice.below(3) == 0) {
        checkin::CheckIn entry;
        entry.before = static_cast<checkin::Kite>(dice.below(3));
        entry.child = {"c-fin"};
        const auto id = usecase::checkIn(workplace, "Fin", entry.before, checkin::ShownBy::Child);
        QVERIFY(id.ok());
        entry.id = *id;
        (void)usecase::checkInAfter(workplace, entry, static_cast<checkin::Kite>(dice.below(3)),
                                    activity.id);
    }
}

std::unique_ptr<Phone> livedThrough(Phone &morven, Dice &dice)
{
    auto ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
    ruth->meet(morven);
    usecase::Workplace workplace = ruth->workplace();
    for (int day = 0; day < daysAHistory; ++day) {
        ruth->clock.moveTo(islandTime(5 + day, 18, dice.below(60)));
        liveADay(workplace, dice);
    }
    return ruth;
}

/// Gran's phone, to which the same events came in another order and some of them twice, in three
/// deliveries.
std::unique_ptr<Phone> toldInAnotherOrder(Phone &ruth, Dice &dice)
{
    auto gran = std::make_unique<Phone>("Gran Isobel", store::Role::Caregiver, "h-fin");
    gran->clock.moveTo(ruth.clock.nowMs());
    auto events = *store::EventRepository(ruth.database).all();
    dice.shuffle(events);
    const std::size_t third = events.size() / 3;
    for (std::size_t part = 0; part < 3; ++part) {
        auto recording = store::Recording::begin(gran->database, gran->device, gran->clock);
        const std::size_t begin = part == 0 ? 0 : part * third - 5; // five are delivered again
        const std::size_t end = part == 2 ? events.size() : (part + 1) * third;
        for (std::size_t i = begin; i < end; ++i)
            (void)recording->receive(events[i]);
        (void)recording->commit();
    }
    return gran;
}

/// All that a menu says, as text.
std::string toldBy(Phone &phone, const usecase::MenuRequest &request)
{
    usecase::Workplace workplace = phone.workplace();
    const auto today = usecase::suggestToday(workplace, request);
    if (!today)
        return "no menu: " + today.error().detail;
    std::string text = std::to_string(today->menu.value);
    for (const rotation::Offer &offer : today->menu.offers)
        text += " " + offer.admitted.activity().id.value + ":" +
                std::to_string(offer.worth.total()) + ":" + std::to_string(offer.coverage);
    return text;
}

usecase::MenuRequest anyRequest(Dice &dice, Day first)
{
    usecase::MenuRequest request;
    request.child = "Fin";
    request.day = first + dice.below(daysAHistory + 30);
    request.part = static_cast<PartOfDay>(dice.below(3));
    if (dice.below(2) == 0)
        request.kite = static_cast<checkin::Kite>(dice.below(5));
    request.room.visitorUnderThree = dice.below(5) == 0;
    request.filters.noTable = dice.below(5) == 0;
    request.filters.tiredAdult = dice.below(5) == 0;
    request.offers = 3 + dice.below(3);
    return request;
}

} // namespace

/// Guards design.md 5: phones of one home that hold the same events show the same menu, whatever
/// the order in which the events came: a thousand random days.
class TestSameMenuAnyOrder : public QObject
{
    Q_OBJECT
private slots:
    void aThousandDaysTwoPhonesOneMenu_data()
    {
        QTest::addColumn<int>("seed");
        for (int seed = 1; seed <= histories; ++seed)
            QTest::addRow("history %d", seed) << seed;
    }

    void aThousandDaysTwoPhonesOneMenu()
    {
        QFETCH(int, seed);
        Dice dice(seed);
        auto morven = therapistWith({"Fin"});
        auto ruth = livedThrough(*morven, dice);
        auto gran = toldInAnotherOrder(*ruth, dice);
        const Day first = *dayFrom({2027, 1, 5});
        std::set<std::string> different;
        for (int day = 0; day < 100; ++day) {
            const usecase::MenuRequest request = anyRequest(dice, first);
            const std::string told = toldBy(*ruth, request);
            QCOMPARE(toldBy(*gran, request), told);
            different.insert(told);
        }
        QVERIFY(different.size() > 50); // the days do differ
    }

    void andOneWeek()
    {
        Dice dice(99);
        auto morven = therapistWith({"Fin"});
        auto ruth = livedThrough(*morven, dice);
        auto gran = toldInAnotherOrder(*ruth, dice);
        std::vector<std::vector<std::string>> weeks;
        for (Phone *phone : {ruth.get(), gran.get()}) {
            usecase::Workplace workplace = phone->workplace();
            const auto week = usecase::planWeek(workplace, {"Fin", {}, {}, 2});
            QVERIFY(week.ok());
            std::vector<std::string> &ids = weeks.emplace_back();
            for (const usecase::WeekDay &day : week->days) {
                for (const safety::Admitted &planned : day.planned)
                    ids.push_back(planned.activity().id.value);
            }
        }
        QVERIFY(weeks[0].size() >= 10);
        QVERIFY(weeks[0] == weeks[1]);
    }
};

QTEST_APPLESS_MAIN(TestSameMenuAnyOrder)
#include "tst_same_menu_any_order.moc"
