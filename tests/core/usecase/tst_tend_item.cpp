#include <QtTest>

#include "core/store/event_repository.h"
#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/usecase/box_items.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/menu_question.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;
using box::ExceptionKind;

namespace {

Day on(int dayOfJanuary)
{
    return *dayFrom({2027, 1, 1}) + (dayOfJanuary - 1);
}

bool refused(const Outcome &done, ErrorCode code)
{
    return !done.ok() && done.error().code == code;
}

} // namespace

/// Guards what an adult notes of one item beside a play: job.md G2, 1.4; safety.md HY-01.
class TestTendItem : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_ruth;

    usecase::BoxItem item(const char *id)
    {
        usecase::Workplace workplace = m_ruth->workplace();
        const auto family = usecase::loadFamily(workplace, "Fin");
        const auto today = store::todayOf(m_ruth->clock);
        for (const usecase::BoxItem &one :
             usecase::boxItemsOf(*family, realCatalogue(), today->day)) {
            if (one.row.item.value == id)
                return one;
        }
        return {};
    }
    Outcome gone(const char *id, ExceptionKind kind, int pieces, std::optional<Day> day = {})
    {
        usecase::Workplace workplace = m_ruth->workplace();
        return usecase::noteGone(workplace, {"Fin", {}, {id}}, kind, pieces, day);
    }
    Outcome mark(const char *id, box::HygieneMark mark)
    {
        usecase::Workplace workplace = m_ruth->workplace();
        return usecase::noteHygiene(workplace, {"Fin", {}, {id}}, mark);
    }
    bool isAdmitted(const char *activity)
    {
        usecase::Workplace workplace = m_ruth->workplace();
        const auto family = usecase::loadFamily(workplace, "Fin");
        const auto gated =
            usecase::gatedFor(*family, realCatalogue(), {}, store::todayOf(m_ruth->clock)->day);
        return std::any_of(
            gated.admitted.begin(), gated.admitted.end(),
            [activity](const auto &one) { return one.activity().id.value == activity; });
    }

private slots:
    void init()
    {
        auto morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        QVERIFY(m_ruth->meet(*morven) > 0);
    }
    void cleanup()
    {
        const auto matches = store::Projector(m_ruth->database).matchesRefold();
        QVERIFY(matches && *matches);
    }

    /// The said day is a field of its own (events.md 11); the chart and the forecast go by it.
    void whatWentYesterdayIsYesterdays()
    {
        QVERIFY(gone("eyes", ExceptionKind::UsedUp, 2, on(10)).ok());
        QCOMPARE(item("eyes").row.low, 4);
        QVERIFY(item("eyes").row.uses ==
                (std::vector<box::DatedUse>{{on(10), ExceptionKind::UsedUp, 2}}));
    }

    void usesFallIntoTheirWeeks()
    {
        QVERIFY(gone("eyes", ExceptionKind::UsedUp, 1, on(10)).ok()); // a Sunday
        QVERIFY(gone("eyes", ExceptionKind::Broken, 2).ok());         // Monday 11 January
        const auto weeks = usecase::weeksOfUse(item("eyes").row, on(11), 3);
        QCOMPARE(weeks.size(), std::size_t{2}); // the box came in the week of the 4th
        QVERIFY(weeks[0].first == on(4));
        QCOMPARE(weeks[0].pieces, 1);
        QVERIFY(weeks[1].first == on(11));
        QCOMPARE(weeks[1].pieces, 2);
        const auto later = usecase::weeksOfUse(item("eyes").row, on(32), 3);
        QCOMPARE(later.size(), std::size_t{3});
        QVERIFY(later.front().first == on(18));
        QCOMPARE(later.front().pieces, 0);
    }

    void stillInUseComesBack()
    {
        QVERIFY(gone("pegs", ExceptionKind::StillInUse, 2).ok());
        QCOMPARE(item("pegs").row.low, 4);
        QCOMPARE(item("pegs").row.out, 2);
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(refused(usecase::noteBackAgain(workplace, {"Fin", {}, {"pegs"}}, 3),
                        ErrorCode::Invalid));
        QVERIFY(usecase::noteBackAgain(workplace, {"Fin", {}, {"pegs"}}, 2).ok());
        QCOMPARE(item("pegs").row.low, 6);
        QCOMPARE(item("pegs").row.out, 0);
        QVERIFY(item("pegs").row.uses.empty()); // nothing was used up
    }

    void lostBesideAPlayOpensTheFloorNoteToo()
    {
        QVERIFY(gone("eyes", ExceptionKind::Lost, 1).ok());
        usecase::Workplace workplace = m_ruth->workplace();
        QCOMPARE(usecase::loadFamily(workplace, "Fin")->losses.size(), std::size_t{1});
        QVERIFY(usecase::noteFound(workplace, "Fin", {}, {"eyes"}, 1).ok());
        QVERIFY(usecase::loadFamily(workplace, "Fin")->losses.empty());
        QVERIFY(item("eyes").row.uses.empty()); // what turned up was not used
    }

    void badInputIsNamedAndWritesNothing()
    {
        const auto events = *store::EventRepository(m_ruth->database).count();
        QVERIFY(refused(gone("eyes", ExceptionKind::UsedUp, 0), ErrorCode::Invalid));
        QVERIFY(refused(gone("eyes", ExceptionKind::UsedUp, -1), ErrorCode::Invalid));
        QVERIFY(refused(gone("eyes", ExceptionKind::UsedUp, 1000), ErrorCode::Invalid));
        QVERIFY(refused(gone("eyes", ExceptionKind::UsedUp, 1, on(12)), ErrorCode::Invalid));
        QVERIFY(refused(gone("eyes", ExceptionKind::UsedUp, 1, on(11) - 400), ErrorCode::Invalid));
        QVERIFY(refused(gone("marbles", ExceptionKind::UsedUp, 1), ErrorCode::NotFound));
        QVERIFY(refused(mark("dough", box::HygieneMark::Washed), ErrorCode::Invalid));
        usecase::Workplace workplace = m_ruth->workplace();
        const usecase::Tending dough{"Fin", {}, {"dough"}};
        const box::PieceId pot = box::pieceId(std::nullopt, 0);
        QVERIFY(refused(usecase::noteOpened(workplace, dough, {"packed/7"}, on(10)),
                        ErrorCode::NotFound));
        QVERIFY(refused(usecase::noteOpened(workplace, dough, pot, on(12)), ErrorCode::Invalid));
        QVERIFY(refused(usecase::noteOpened(workplace, dough, pot, on(3)), ErrorCode::Invalid));
        QVERIFY(refused(usecase::noteLeftOpen(workplace, dough, {"9/9"}), ErrorCode::NotFound));
        QVERIFY(refused(usecase::setKeepingLimit(workplace, dough, 0), ErrorCode::Invalid));
        QVERIFY(refused(usecase::setKeepingLimit(workplace, dough, 5000), ErrorCode::Invalid));
        QCOMPARE(*store::EventRepository(m_ruth->database).count(), events);
    }

    /// safety.md HY-01: what was in a mouth is set aside until it is washed.
    void mouthedIsNotOfferedUntilItIsWashed()
    {
        QVERIFY(isAdmitted("gusty-shirts"));
        QVERIFY(mark("pegs", box::HygieneMark::Mouthed).ok());
        QVERIFY(!isAdmitted("gusty-shirts"));
        QVERIFY(mark("pegs", box::HygieneMark::Washed).ok());
        QVERIFY(isAdmitted("gusty-shirts"));
    }

    /// activities.md 1.3: a home-made pot is thrown away after 7 days; nothing past its date is
    /// offered.
    void pastItsDateNothingIsOffered()
    {
        m_ruth->clock.moveTo(islandTime(12, 18, 0)); // opened on the 4th
        QVERIFY(isAdmitted("crumb-counter"));
        usecase::Workplace workplace = m_ruth->workplace();
        const usecase::Tending dough{"Fin", {}, {"dough"}};
        QVERIFY(usecase::setKeepingLimit(workplace, dough, 7).ok());
        QCOMPARE(item("dough").freshness.pastDate, 1);
        QVERIFY(!isAdmitted("crumb-counter"));
        QVERIFY(usecase::setKeepingLimit(workplace, dough, std::nullopt).ok());
        QVERIFY(isAdmitted("crumb-counter"));
    }

    /// "Use soon" is one of the parts of the worth, "never for anything with a hazard note"
    /// (activities.md 2.2; the part itself: tst_worth).
    void usedSoonReachesTheMenuUnlessSomethingSpeaksAgainstIt()
    {
        const auto soon = [this] {
            usecase::Workplace workplace = m_ruth->workplace();
            const auto family = usecase::loadFamily(workplace, "Fin");
            const auto now = store::todayOf(m_ruth->clock);
            return usecase::questionFor(workplace, *family, {}, *now, *now).useSoon.at({"dough"});
        };
        QVERIFY(!soon());
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(
            usecase::noteLeftOpen(workplace, {"Fin", {}, {"dough"}}, box::pieceId(std::nullopt, 0))
                .ok());
        QVERIFY(soon());
        QVERIFY(mark("dough", box::HygieneMark::Mouthed).ok());
        QVERIFY(!soon());
    }

    /// A straw is opened by the first play with it, and the second one after its week.
    void thePlayOpensWhatItUsesFirst()
    {
        QVERIFY(!item("straw").freshness.inUse());
        usecase::Workplace workplace = m_ruth->workplace();
        const auto play =
            usecase::startPlay(workplace, {"Fin", {"paper-regatta"}, {}, std::nullopt});
        QVERIFY(play.ok());
        QVERIFY(item("straw").freshness.inUse()->opened == on(11));
        QCOMPARE(item("straw").freshness.pieces.size(), std::size_t{2});
        m_ruth->clock.moveTo(islandTime(19, 18, 0)); // past its week: activities.md 1.3
        QCOMPARE(item("straw").freshness.pastDate, 1);
        QCOMPARE(item("straw").freshness.usable, 1);
        const auto again =
            usecase::startPlay(workplace, {"Fin", {"paper-regatta"}, {}, std::nullopt});
        QVERIFY(again.ok());
        QVERIFY(item("straw").freshness.pieces.back().opened == on(19));
        QVERIFY(usecase::throwAway(workplace, {"Fin", {}, {"straw"}}).ok()); // the old one goes
        QCOMPARE(item("straw").freshness.pieces.size(), std::size_t{1});
        QVERIFY(item("straw").freshness.pieces.front().opened == on(19));
    }

    /// Monthly looks come with the monthly count; a weekly one stands alone.
    void aLookThatTheCountBringsIsNotAskedForTwice()
    {
        m_ruth->clock.moveTo(islandTime(31, 18, 0) + 4 * msPerDay);
        QVERIFY(item("pegs").freshness.lookDue);
        QVERIFY(!item("pegs").lookAlone);
        QVERIFY(item("dough").lookAlone);
    }

    void aCountIsDueOnceAMonth()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        const auto due = [&](int january) {
            return usecase::countIsDue(*usecase::loadFamily(workplace, "Fin"), on(january));
        };
        QVERIFY(!due(31));
        QVERIFY(due(31 + 3)); // thirty days after the handing over on 4 January
        m_ruth->clock.moveTo(islandTime(31, 18, 0));
        std::map<ItemId, int> counts;
        const auto family = usecase::loadFamily(workplace, "Fin");
        for (const store::ItemRow &row : family->items)
            counts[row.item] = row.low;
        QVERIFY(usecase::countBox(workplace, "Fin", {}, counts).ok());
        QVERIFY(!due(31 + 3));
        QVERIFY(!item("pegs").freshness.lookDue); // who counts them has them in hand
    }
};

QTEST_APPLESS_MAIN(TestTendItem)
#include "tst_tend_item.moc"
