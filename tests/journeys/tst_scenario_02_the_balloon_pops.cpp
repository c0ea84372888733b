#include <QtTest>

#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/suggest_today.h"
#include "core/wording/label_words.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// job.md scenario 2: Rory, five, and his father Struan; Slow-Sky Taps on Tuesday at 17:40.
class TestScenario02 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_struan;
    const ActivityId m_taps{"slow-sky-taps"};
    const ActivityId m_buoy{"quiet-roll-buoy"};

    usecase::TodayMenu menu()
    {
        usecase::MenuRequest request;
        request.child = "Rory";
        request.room.present.emplace();
        usecase::Workplace workplace = m_struan->workplace();
        auto today = usecase::suggestToday(workplace, request);
        if (!today)
            qFatal("%s", today.error().detail.c_str());
        return *std::move(today);
    }

    /// @param allFound "All pieces found", or "Can't find a piece".
    void burst(bool allFound)
    {
        usecase::Workplace workplace = m_struan->workplace();
        const auto play = usecase::startPlay(workplace, {"Rory", m_taps, "Struan", std::nullopt});
        QVERIFY(play.ok());
        const auto kind = allFound ? box::ExceptionKind::UsedUp : box::ExceptionKind::Lost;
        QVERIFY(usecase::nameExceptions(workplace, *play, "Struan", {{{"balloon"}, kind, 1}}).ok());
        QVERIFY(usecase::stopPlay(workplace, *play, "Struan", {}).ok());
    }

    static const safety::Admitted *admittedIn(const usecase::TodayMenu &today,
                                              const ActivityId &activity)
    {
        for (const safety::Admitted &admitted : today.gated.admitted) {
            if (admitted.activity().id == activity)
                return &admitted;
        }
        return nullptr;
    }

    static bool heldForThePieces(const usecase::TodayMenu &today, const ActivityId &activity)
    {
        for (const safety::HeldBack &held : today.gated.heldBack) {
            if (held.activity->id != activity)
                continue;
            return std::any_of(held.reasons.begin(), held.reasons.end(), [](const auto &reason) {
                return reason.code == safety::ReasonCode::FloorNoteOpen &&
                       reason.tag == catalogue::Tag::Balloon;
            });
        }
        return false;
    }

private slots:
    void init()
    {
        auto morven = therapistWith({"Rory"});
        m_struan = std::make_unique<Phone>("Struan", store::Role::Parent, "h-rory");
        m_struan->clock.moveTo(islandTime(12, 17, 40)); // Tuesday
        QVERIFY(m_struan->meet(*morven) > 0);
    }

    void aBalloonIsForAnAdultBesideAndItsWordsComeFirst()
    {
        const auto today = menu();
        const safety::Admitted *taps = admittedIn(today, m_taps);
        QVERIFY(taps);
        QCOMPARE(taps->supervision(), catalogue::Supervision::Beside);
        // safety.md L-2, L-7 and the precedence of section 2: balloon words before all others.
        for (const auto region : {wording::Region::UnitedStates, wording::Region::Europe}) {
            const auto words = wording::labelWords(taps->activity(), taps->items(),
                                                   taps->cautions(), realCatalogue(), region);
            QVERIFY(!words.empty());
            QVERIFY(words.front().words.find("broken balloons") != std::string::npos);
        }
    }

    void allFoundLeavesTwoAndBothBalloonEntriesStay()
    {
        burst(true);
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").low, 2);
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 2);
        const auto today = menu();
        for (const ActivityId &activity : {m_taps, m_buoy}) {
            const safety::Admitted *admitted = admittedIn(today, activity);
            QVERIFY(admitted);
            QVERIFY(admitted->swaps().empty());
            QCOMPARE(admitted->supervision(), catalogue::Supervision::Beside);
        }
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::loadFamily(workplace, "Rory")->losses.empty());
    }

    void aPieceThatCannotBeFoundHidesBalloonsUntilTheFloorIsChecked()
    {
        burst(false);
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").low, 2);
        auto today = menu();
        QVERIFY(heldForThePieces(today, m_taps));
        QVERIFY(heldForThePieces(today, m_buoy));
        QVERIFY(!admittedIn(today, m_taps));
        m_struan->clock.moveTo(islandTime(13, 17, 40));
        QVERIFY2(heldForThePieces(menu(), m_taps), "a night makes no floor safe");
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::checkFloor(workplace, "Rory", "Struan").ok());
        today = menu();
        QVERIFY(admittedIn(today, m_taps));
        QVERIFY(admittedIn(today, m_buoy));
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").low, 2);
    }

    /// Trap: "inviting Rory (under 8) to blow up the next one".
    void noStepAsksAChildToBlowUpABalloon()
    {
        for (const ActivityId &id : {m_taps, m_buoy}) {
            const catalogue::Activity *activity = realCatalogue().activity(id);
            QString text = QString::fromStdString(activity->invite + activity->adultLine);
            for (const catalogue::Step &step : activity->steps)
                text += QString::fromStdString(step.text);
            QVERIFY2(!text.contains(QRegularExpression("child[^.]*blow|blow[^.]*balloon")),
                     qPrintable(text));
            QVERIFY(text.contains("pump"));
        }
    }
};

QTEST_APPLESS_MAIN(TestScenario02)
#include "tst_scenario_02_the_balloon_pops.moc"
