#include <QtTest>

#include "writing_phone.h"

#include "core/box/freshness.h"
#include "core/box/request.h"

using namespace lidlark;
using namespace lidlark::box;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

using Phone = WritingPhone;

namespace {

Day on(int dayOfJanuary)
{
    return *dayFrom({2027, 1, dayOfJanuary});
}

ItemCare careOf(const std::vector<Event> &log)
{
    return foldCare(log, journal::Seen(log));
}

const PieceId firstPiece = pieceId(std::nullopt, 0);
const PieceId secondPiece = pieceId(std::nullopt, 1);

/// activities.md 1.3: home-made dough is thrown away after 7 days; a straw is replaced weekly.
const KeepingRules sevenDays{
    .openedDays = 7, .openAirDays = 3, .replaceDays = {}, .checkDays = 7, .perishable = true};

} // namespace

/// Guards what dries out, grows old and has to be washed: design.md 6, events.md 5, activities.md
/// 1.3.
class TestFreshness : public QObject
{
    Q_OBJECT

private:
    std::vector<Event> m_log;

    void opened(Phone &phone, const PieceId &piece, std::optional<Day> day, std::int64_t ms)
    {
        phone.say(Kind::Opened, fieldsOf(Opened{eyes, piece, day}), ms);
    }

private slots:
    void init() { m_log.clear(); }

    void anUnopenedPieceDoesNotGrowOld()
    {
        const Stock stock{{{std::nullopt, on(4), 1}}, 1, 1, 0};
        const Freshness freshness = freshnessOf(stock, {}, sevenDays, on(31));
        QVERIFY(freshness.pieces.front().state == PieceState::Unopened);
        QCOMPARE(freshness.usable, 1);
        QVERIFY(!freshness.inUse());
        QVERIFY(freshness.toOpen() == firstPiece);
    }

    /// Seven days after opening is the last; the day after, it is not offered.
    void itsDaysRunFromTheOpening_data()
    {
        QTest::addColumn<int>("today");
        QTest::addColumn<int>("state");
        QTest::newRow("opened today") << 4 << static_cast<int>(PieceState::Good);
        QTest::newRow("the fifth day") << 8 << static_cast<int>(PieceState::Good);
        QTest::newRow("two days left") << 9 << static_cast<int>(PieceState::UseSoon);
        QTest::newRow("the last day") << 11 << static_cast<int>(PieceState::UseSoon);
        QTest::newRow("past it") << 12 << static_cast<int>(PieceState::PastDate);
    }
    void itsDaysRunFromTheOpening()
    {
        QFETCH(int, today);
        QFETCH(int, state);
        Phone ruth("ruth", m_log);
        opened(ruth, firstPiece, on(4), hourMs);
        const Stock stock{{{std::nullopt, on(4), 1}}, 1, 1, 0};
        const Freshness freshness = freshnessOf(stock, careOf(m_log), sevenDays, on(today));
        QCOMPARE(static_cast<int>(freshness.pieces.front().state), state);
        QVERIFY(freshness.pieces.front().lastDay == on(11));
        QCOMPARE(freshness.usable, freshness.pastDate == 0 ? 1 : 0);
        QCOMPARE(freshness.useSoon, freshness.pieces.front().state == PieceState::UseSoon);
    }

    void leftOpenCostsDaysOncePerDay()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        opened(ruth, firstPiece, on(4), hourMs);
        ruth.say(Kind::LeftOpen, fieldsOf(LeftOpen{eyes, firstPiece, on(6)}), 2 * hourMs);
        gran.say(Kind::LeftOpen, fieldsOf(LeftOpen{eyes, firstPiece, on(6)}),
                 2 * hourMs); // the same
        const Stock stock{{{std::nullopt, on(4), 1}}, 1, 1, 0};
        Freshness freshness = freshnessOf(stock, careOf(m_log), sevenDays, on(7));
        QVERIFY(freshness.pieces.front().lastDay == on(8));
        gran.say(Kind::LeftOpen, fieldsOf(LeftOpen{eyes, firstPiece, on(7)}), 3 * hourMs);
        freshness = freshnessOf(stock, careOf(m_log), sevenDays, on(7));
        QVERIFY(freshness.pieces.front().lastDay == on(5));
        QVERIFY(freshness.pieces.front().state == PieceState::PastDate);
    }

    /// Bought dough has no date of its own; what was left open is used soon all the same.
    void withoutALimitLeftOpenIsUsedSoon()
    {
        KeepingRules bought = sevenDays;
        bought.openedDays.reset();
        Phone ruth("ruth", m_log);
        opened(ruth, firstPiece, on(4), hourMs);
        const Stock stock{{{std::nullopt, on(4), 1}}, 1, 1, 0};
        QVERIFY(!freshnessOf(stock, careOf(m_log), bought, on(30)).useSoon);
        ruth.say(Kind::LeftOpen, fieldsOf(LeftOpen{eyes, firstPiece, on(12)}), 2 * hourMs);
        QVERIFY(freshnessOf(stock, careOf(m_log), bought, on(14)).useSoon);
    }

    void theFamilysOwnLimitCounts()
    {
        KeepingRules bought = sevenDays;
        bought.openedDays.reset();
        Phone ruth("ruth", m_log);
        opened(ruth, firstPiece, on(4), hourMs);
        ruth.say(Kind::Limit, fieldsOf(KeepingLimit{eyes, 7}), 2 * hourMs); // made at home
        const Stock stock{{{std::nullopt, on(4), 1}}, 1, 1, 0};
        QCOMPARE(freshnessOf(stock, careOf(m_log), bought, on(12)).usable, 0);
        ruth.say(Kind::Limit, fieldsOf(KeepingLimit{eyes, std::nullopt}), 3 * hourMs);
        QCOMPARE(freshnessOf(stock, careOf(m_log), bought, on(12)).usable, 1);
    }

    /// The piece opened first goes first; what is gone is the oldest.
    void theOldestGoesFirst()
    {
        Phone ruth("ruth", m_log);
        opened(ruth, secondPiece, on(4), hourMs);
        const std::vector<Arrival> arrivals{{std::nullopt, on(4), 2}};
        Freshness freshness = freshnessOf({arrivals, 2, 2, 0}, careOf(m_log), sevenDays, on(12));
        QVERIFY(freshness.pieces.front().id == secondPiece);
        QCOMPARE(freshness.pastDate, 1);
        QCOMPARE(freshness.usable, 1);
        QVERIFY(freshness.toOpen() == firstPiece); // the open one is too old
        freshness = freshnessOf({arrivals, 1, 1, 0}, careOf(m_log), sevenDays, on(12));
        QCOMPARE(freshness.pieces.size(), std::size_t{1});
        QVERIFY(freshness.pieces.front().id == firstPiece);
        QCOMPARE(freshness.pastDate, 0);
    }

    /// job.md scenario 4: the old date is not the new pot's.
    void aNewPotStartsUnopened()
    {
        Phone ruth("ruth", m_log);
        opened(ruth, firstPiece, on(4), hourMs);
        const std::vector<Arrival> arrivals{{std::nullopt, on(4), 1}, {0, on(22), 1}};
        const Freshness freshness =
            freshnessOf({arrivals, 1, 1, 0}, careOf(m_log), sevenDays, on(22));
        QCOMPARE(freshness.pieces.size(), std::size_t{1});
        QVERIFY(freshness.pieces.front().id == pieceId(0, 0));
        QVERIFY(freshness.pieces.front().state == PieceState::Unopened);
        QVERIFY(!freshness.pieces.front().opened);
    }

    /// A band is replaced after six months, opened or not (safety.md RB-01, activities.md 1.3).
    void whatWearsGoesByTheDayItCame()
    {
        const KeepingRules band{
            .openedDays = {}, .openAirDays = {}, .replaceDays = 183, .checkDays = {}};
        const Stock stock{{{std::nullopt, on(4), 1}}, 1, 1, 0};
        QCOMPARE(freshnessOf(stock, {}, band, on(4) + 183).usable, 1);
        QCOMPARE(freshnessOf(stock, {}, band, on(4) + 184).usable, 0);
    }

    /// "Opened = the earliest date said by anybody who had not seen a correction" (events.md 5).
    void theEarliestUncorrectedDayStands()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        opened(ruth, firstPiece, on(6), hourMs);
        opened(gran, firstPiece, on(5), hourMs);
        QVERIFY(careOf(m_log).pieces.front().opened == on(5));
        ruth.meets(gran, 2 * hourMs);
        opened(ruth, firstPiece, on(8), 3 * hourMs);
        QVERIFY(careOf(m_log).pieces.front().opened == on(8));
        opened(ruth, firstPiece, std::nullopt, 4 * hourMs);
        QVERIFY(!careOf(m_log).pieces.front().opened);
    }

    void aLookIsDueWhenItsDaysHavePassed()
    {
        Phone ruth("ruth", m_log);
        const Stock stock{{{std::nullopt, on(4), 1}}, 1, 1, 0};
        QVERIFY(!freshnessOf(stock, {}, sevenDays, on(10)).lookDue);
        QVERIFY(freshnessOf(stock, {}, sevenDays, on(11)).lookDue);
        QVERIFY(!freshnessOf(stock, {}, sevenDays, on(11)).lastLook); // it only came
        ruth.say(Kind::Checked, fieldsOf(Checked{eyes, on(11)}), hourMs);
        QVERIFY(!freshnessOf(stock, careOf(m_log), sevenDays, on(12)).lookDue);
        // A clock a year ahead does not switch the looking off for a year.
        ruth.say(Kind::Checked, fieldsOf(Checked{eyes, on(11) + 365}), 2 * hourMs);
        QVERIFY(freshnessOf(stock, careOf(m_log), sevenDays, on(31)).lookDue);
    }

    /// safety.md HY-01: set aside until it is washed. A washing that knew nothing of the mouth does
    /// not count.
    void mouthedWaitsForAWashingThatKnewOfIt()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        const auto said = [](HygieneMark mark) { return fieldsOf(HygieneSaid{eyes, mark}); };
        ruth.say(Kind::Hygiene, said(HygieneMark::Mouthed), hourMs);
        gran.say(Kind::Hygiene, said(HygieneMark::Washed), 3 * hourMs);
        QVERIFY(careOf(m_log).mouthed);
        QCOMPARE(careOf(m_log).mouthedBy, std::string("ruth"));
        const Stock stock{{{std::nullopt, on(4), 6}}, 6, 6, 0};
        QCOMPARE(freshnessOf(stock, careOf(m_log), {}, on(5)).usable, 0);
        gran.meets(ruth, 4 * hourMs);
        gran.say(Kind::Hygiene, said(HygieneMark::Washed), 5 * hourMs);
        QVERIFY(!careOf(m_log).mouthed);
    }

    void malformedFieldsHaveNoEffect_data()
    {
        QTest::addColumn<int>("kind");
        QTest::addColumn<QByteArray>("fields");
        const auto row = [](const char *name, Kind kind, const char *fields) {
            QTest::newRow(name) << static_cast<int>(kind) << QByteArray(fields);
        };
        row("no such day", Kind::Opened,
            R"({"item":"eyes","piece":"packed/0","day":"2027-02-30"})");
        row("no piece", Kind::Opened, R"({"item":"eyes","day":"2027-01-05"})");
        row("left open on no day", Kind::LeftOpen, R"({"item":"eyes","piece":"packed/0"})");
        row("kept for no days", Kind::Limit, R"({"item":"eyes","days":0})");
        row("kept for ever", Kind::Limit, R"({"item":"eyes","days":100000})");
        row("an unknown mark", Kind::Hygiene, R"({"item":"eyes","mark":"sniffed"})");
        row("looked at on no day", Kind::Checked, R"({"item":"eyes"})");
    }
    void malformedFieldsHaveNoEffect()
    {
        QFETCH(int, kind);
        QFETCH(QByteArray, fields);
        Phone ruth("ruth", m_log);
        ruth.say(static_cast<Kind>(kind), fields.toStdString(), hourMs);
        QVERIFY(careOf(m_log) == careOf({}));
    }

    /// job.md G5: the same item asked for twice before anybody has seen it is one request.
    void askedTwiceIsOnce()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.request(0, RequestStep::Asked, hourMs);
        gran.request(0, RequestStep::Asked, 2 * hourMs);
        const auto requests = foldRequests(m_log);
        QCOMPARE(requests.size(), std::size_t{1});
        QVERIFY(requests.front().step == RequestStep::Asked);
        QCOMPARE(requests.front().askedBy, std::string("ruth"));
    }

    /// events.md 5: a status only rises, whoever says what in which order.
    void aStatusOnlyRises()
    {
        Phone ruth("ruth", m_log);
        Phone morven("morven", m_log);
        ruth.request(0, RequestStep::Asked, hourMs);
        morven.request(0, RequestStep::Packed, 2 * hourMs);
        morven.request(0, RequestStep::Seen, 3 * hourMs);
        QVERIFY(foldRequests(m_log).front().step == RequestStep::Packed);
        ruth.countedIn(0, 4, 4 * hourMs);
        ruth.request(0, RequestStep::Asked, 5 * hourMs); // an old phone repeats itself
        QVERIFY(foldRequests(m_log).front().step == RequestStep::CountedIn);
        QCOMPARE(roundInHand(foldRequests(m_log)), 1);
        ruth.request(1, RequestStep::Asked, 6 * hourMs);
        QCOMPARE(foldRequests(m_log).size(), std::size_t{2});
        QVERIFY(foldRequests(m_log).back().isOpen());
    }
};

QTEST_APPLESS_MAIN(TestFreshness)
#include "tst_freshness.moc"
