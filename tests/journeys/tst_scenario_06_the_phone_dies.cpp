#include <QtTest>

#include "core/usecase/check_in.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/progress.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// job.md scenario 6: the kite tapped "tugging", Slow Oars started 17:42 on Saturday, battery out
/// at 17:45, phone back on Sunday at 09:30.
class TestScenario06 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_ruth;
    PlayId m_play;

    usecase::Family family()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        return *usecase::loadFamily(workplace, "Fin");
    }
    std::optional<usecase::Progress> progress()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        const auto loaded = usecase::loadProgress(workplace, family().box.id, family().child.id);
        return loaded ? *loaded : std::nullopt;
    }

private slots:
    void init()
    {
        auto morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        m_ruth->clock.moveTo(islandTime(16, 17, 42));
        QVERIFY(m_ruth->meet(*morven) > 0);
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(usecase::checkIn(workplace, "Fin", checkin::Kite::Whirling, checkin::ShownBy::Child)
                    .ok());
        m_play = *usecase::startPlay(workplace, {"Fin", {"slow-oars"}, {}, std::nullopt});
        m_ruth->clock.moveTo(islandTime(17, 9, 30));
    }

    void sundayKnowsWhatWasPlayedOnSaturday()
    {
        const auto left = progress();
        QVERIFY(left.has_value());
        QCOMPARE(left->activity.value, std::string("slow-oars"));
        QVERIFY(left->began.day == *dayFrom({2027, 1, 16}));
        QVERIFY(left->began.part == PartOfDay::Evening);
    }

    void theTapBeforeIsKeptAndNoAfterIsInvented()
    {
        const auto checkIns = family().checkIns;
        QCOMPARE(checkIns.size(), std::size_t{1});
        QCOMPARE(checkIns.front().before, checkin::Kite::Whirling);
        QVERIFY(!checkIns.front().after.has_value());
    }

    void eachOfTheThreeAnswersClosesTheQuestion_data()
    {
        QTest::addColumn<int>("answer");
        QTest::newRow("yes") << 0;
        QTest::newRow("something's different") << 1;
        QTest::newRow("we stopped early") << 2;
    }

    void eachOfTheThreeAnswersClosesTheQuestion()
    {
        QFETCH(int, answer);
        usecase::Workplace workplace = m_ruth->workplace();
        const std::vector<usecase::NamedException> broken{
            {{"rband"}, box::ExceptionKind::Broken, 1}};
        const Outcome done =
            answer == 2
                ? usecase::stopPlay(workplace, m_play, {}, {})
                : usecase::putBack(workplace, m_play, {},
                                   answer == 1 ? broken : std::vector<usecase::NamedException>{});
        QVERIFY(done.ok());
        QVERIFY(!progress().has_value());
        const auto plays = family().plays;
        QCOMPARE(plays.size(), std::size_t{1});
        QVERIFY(plays.front().when.day == *dayFrom({2027, 1, 16})); // no two-day-long activity
        QCOMPARE(*plays.front().ending, answer == 0   ? play::Ending::AllBack
                                        : answer == 1 ? play::Ending::SomethingDifferent
                                                      : play::Ending::Stopped);
        QCOMPARE(itemOf(*m_ruth, "Fin", "rband").low, answer == 1 ? 0 : 1);
    }

    void whenGransTabletNotedAllBackNobodyIsAsked()
    {
        Phone gran("Gran", store::Role::Caregiver, "h-fin");
        gran.clock.moveTo(islandTime(16, 18, 30));
        QVERIFY(gran.meet(*m_ruth) > 0);
        usecase::Workplace grans = gran.workplace();
        QVERIFY(usecase::putBack(grans, m_play, "Gran", {}).ok());
        QVERIFY(m_ruth->meet(gran) > 0);
        QVERIFY(!progress().has_value());
    }

    void theStepAndTheTrayComeBack()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        auto kept = *progress();
        kept.stage = usecase::Stage::PuttingBack;
        kept.step = 2;
        kept.home[{"rband"}] = 1;
        QVERIFY(usecase::keepProgress(workplace, family().box.id, kept).ok());
        QVERIFY(*progress() == kept);
    }

    void aTornNoteOfWhereWeWereFallsBackToTheEvent()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(store::DeviceRepository(m_ruth->database)
                    .setLocalState("in-hand." + family().box.id.value, "{\"play\":")
                    .ok());
        QCOMPARE(progress()->play.value, m_play.value);
    }
};

QTEST_APPLESS_MAIN(TestScenario06)
#include "tst_scenario_06_the_phone_dies.moc"
