#include <QtTest>

#include "core/usecase/caseload.h"
#include "core/usecase/coaching.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/set_up_home.h"
#include "core/wording/caseload_words.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// Guards the board of the one who packs (job.md T16): box health, and nothing of diligence.
class TestCaseload : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_ruth;

    [[nodiscard]] std::vector<usecase::BoxHealth> board()
    {
        usecase::Workplace workplace = m_morven->workplace();
        const auto all = usecase::caseload(workplace);
        return all ? *all : std::vector<usecase::BoxHealth>();
    }
    [[nodiscard]] usecase::BoxHealth healthOf(const std::string &child)
    {
        for (const usecase::BoxHealth &health : board()) {
            if (health.child == child)
                return health;
        }
        return {};
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Rory", "Fin", "Anya"});
        m_morven->clock.moveTo(islandTime(11, 18, 10));
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        QVERIFY(m_ruth->meet(*m_morven) > 0);
    }

    void everyBoxStandsThereByAliasAndAFullOneNeedsNothing()
    {
        const auto all = board();
        QCOMPARE(all.size(), std::size_t{3});
        QCOMPARE(all[0].child, std::string("Anya"));
        QCOMPARE(all[1].child, std::string("Fin"));
        QCOMPARE(all[2].child, std::string("Rory"));
        QVERIFY(healthOf("Rory").isWell());
    }

    void whatIsAskedForNeedsStockUntilItIsPacked()
    {
        usecase::Workplace ruths = m_ruth->workplace();
        QVERIFY(usecase::askFor(ruths, "Fin", {}, {"eyes"}).ok());
        (void)m_morven->meet(*m_ruth);
        QVERIFY(healthOf("Fin").asked == std::vector<ItemId>{{"eyes"}});
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::moveRequest(workplace, "Fin", {}, {"eyes"}, box::RequestStep::Seen).ok());
        QVERIFY(healthOf("Fin").needsStock());
        QVERIFY(
            usecase::moveRequest(workplace, "Fin", {}, {"eyes"}, box::RequestStep::Packed).ok());
        QVERIFY(!healthOf("Fin").needsStock());
    }

    void whatRunsLowNeedsStockThoughNobodyAsked()
    {
        usecase::Workplace ruths = m_ruth->workplace();
        QVERIFY(usecase::countBox(ruths, "Fin", {}, {{{"crayons"}, 1}}).ok());
        (void)m_morven->meet(*m_ruth);
        QVERIFY(healthOf("Fin").low == std::vector<ItemId>{{"crayons"}});
    }

    /// "No last played": whoever plays, counts or asks nothing changes nothing on the board.
    void playingLeavesNoTraceOnTheBoard()
    {
        const auto shown = [this] {
            const usecase::BoxHealth health = healthOf("Fin");
            return std::tuple(health.asked, health.low, health.onTheFloor, health.reviewOn,
                              health.isWell());
        };
        const auto before = shown();
        usecase::Workplace ruths = m_ruth->workplace();
        for (int evening = 0; evening < 5; ++evening) {
            const auto play = usecase::startPlay(ruths, {"Fin", {"elastic-gate"}, {}, {}});
            QVERIFY(play.ok());
            QVERIFY(usecase::putBack(ruths, *play, {}, {}, {}).ok());
        }
        (void)m_morven->meet(*m_ruth);
        QVERIFY(shown() == before);
    }

    void aChangedListAwaitsTheFamilysWord()
    {
        usecase::Workplace workplace = m_morven->workplace();
        auto packed = usecase::island::standardBox();
        packed.erase({"bands"});
        QVERIFY(usecase::reviseBox(workplace, "Rory", {}, packed, "Red skin.").ok());
        const usecase::BoxHealth health = healthOf("Rory");
        QVERIFY(health.awaitsConfirmation() && !health.needsStock());
        QCOMPARE(health.unconfirmed->number, 2);
        QVERIFY(health.unconfirmed->why == std::vector<std::string>{"Red skin."});
        QCOMPARE(health.unconfirmed->by, std::string("Morven"));
        Phone struan("Struan", store::Role::Parent, "h-rory");
        QVERIFY(struan.meet(*m_morven) > 0);
        usecase::Workplace struans = struan.workplace();
        QVERIFY(usecase::confirmTakenOut(struans, "Rory", {}, {"bands"}).ok());
        (void)m_morven->meet(struan);
        QVERIFY(!healthOf("Rory").awaitsConfirmation());
    }

    /// Scenario 3's Bartek: until the things are out, and then no longer.
    void anAllergyIsASafetyNoteUntilTheThingsAreOut()
    {
        Phone marta("Marta", store::Role::Parent, "h-anya");
        QVERIFY(marta.meet(*m_morven) > 0);
        usecase::Workplace martas = marta.workplace();
        QVERIFY(usecase::sayFact(martas, {"h-anya"}, {"", "latex", "yes"}).ok());
        (void)m_morven->meet(marta);
        const usecase::BoxHealth health = healthOf("Anya");
        QVERIFY(health.hasSafetyNote());
        QCOMPARE(health.mustAvoid.front().note.author, std::string("Marta"));
        for (const usecase::TakeOutThing &thing : health.mustAvoid.front().things)
            QVERIFY(usecase::confirmTakenOut(martas, "Anya", {}, thing.item).ok());
        (void)m_morven->meet(marta);
        QVERIFY(!healthOf("Anya").hasSafetyNote());
    }

    /// job.md 4: Fin's review is on 29 March 2027.
    void aReviewIsDueFromAFortnightBefore()
    {
        m_morven->clock.moveTo(islandTime(31 + 28 + 14, 9, 0)); // 14 March
        QVERIFY(!healthOf("Fin").reviewDue());
        m_morven->clock.moveTo(islandTime(31 + 28 + 15, 9, 0));
        QVERIFY(healthOf("Fin").reviewOn == dayFrom({2027, 3, 29}));
    }

    void oneBoxThatCannotBeReadHidesNoOther()
    {
        m_morven->clock.moveTo(islandTime(-2500, 9, 0)); // 2020: nobody was born yet
        const auto all = board();
        QCOMPARE(all.size(), std::size_t{3});
        for (const usecase::BoxHealth &health : all)
            QVERIFY(health.problem.has_value() && !health.isWell());
    }

    /// T17: six lines, ticks of this phone alone.
    void theHandingOverHasSixLinesThatStayTicked()
    {
        QCOMPARE(wording::coachingLines().size(), std::size_t{usecase::coachingLines});
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::tickCoaching(workplace, "Fin", 3, true).ok());
        QVERIFY(*usecase::coachingOf(workplace, "Fin") ==
                (std::vector<bool>{false, false, false, true, false, false}));
        QVERIFY(*usecase::coachingOf(workplace, "Rory") == std::vector<bool>(6, false));
        QVERIFY(usecase::tickCoaching(workplace, "Fin", 3, false).ok());
        QVERIFY(*usecase::coachingOf(workplace, "Fin") == std::vector<bool>(6, false));
        const Outcome refused = usecase::tickCoaching(workplace, "Fin", 6, true);
        QVERIFY(!refused.ok() && refused.error().code == ErrorCode::Invalid);
    }
};

QTEST_APPLESS_MAIN(TestCaseload)
#include "tst_caseload.moc"
