#include <QtTest>

#include "core/store/projector.h"
#include "core/usecase/box_questions.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// job.md S5 and events.md 3.4: no wrong clock hides what somebody noted, not even by a full count.
class TestWrongClocks : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_ruth;
    std::unique_ptr<Phone> m_gran;

    static void usedUp(Phone &phone, int pieces)
    {
        usecase::Workplace workplace = phone.workplace();
        QVERIFY(
            usecase::noteGone(workplace, {"Fin", {}, {"eyes"}}, box::ExceptionKind::UsedUp, pieces)
                .ok());
    }
    static void counted(Phone &phone, int pieces)
    {
        usecase::Workplace workplace = phone.workplace();
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, pieces}}).ok());
    }
    static std::pair<int, int> eyesOn(Phone &phone)
    {
        const store::ItemRow row = itemOf(phone, "Fin", "eyes");
        return {row.low, row.high};
    }
    void meetUntilQuiet()
    {
        for (int round = 0; round < 3; ++round) {
            (void)m_ruth->meet(*m_gran);
            (void)m_gran->meet(*m_ruth);
        }
    }
    void bothSay(std::pair<int, int> eyes)
    {
        for (Phone *phone : {m_ruth.get(), m_gran.get()}) {
            QCOMPARE(eyesOn(*phone), eyes);
            const auto matches = store::Projector(phone->database).matchesRefold();
            QVERIFY(matches && *matches);
        }
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        m_gran = std::make_unique<Phone>("Gran", store::Role::Caregiver, "h-fin");
        m_ruth->clock.moveTo(islandTime(10, 12, 0));
        m_gran->clock.moveTo(islandTime(10, 12, 0));
        QVERIFY(m_ruth->meet(*m_morven) > 0);
        QVERIFY(m_gran->meet(*m_morven) > 0);
    }

    /// Gran's tablet is two days ahead and counts six, while Ruth notes one used up.
    void twoDaysAheadHidesNothing()
    {
        m_gran->clock.moveTo(islandTime(13, 18, 0));
        counted(*m_gran, 6);
        m_ruth->clock.moveTo(islandTime(11, 18, 20));
        usedUp(*m_ruth, 1);
        meetUntilQuiet();
        bothSay({5, 6});
        const auto questions = itemOf(*m_ruth, "Fin", "eyes").questions;
        QCOMPARE(questions.size(), std::size_t{1});
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(usecase::answerQuestion(workplace, "Fin", {}, questions.front().id, "after").ok());
        meetUntilQuiet();
        bothSay({5, 5});
    }

    /// Her tablet woke up three years ago, in 2024: what she notes is not swept away by Ruth's
    /// count.
    void threeYearsSlowHidesNothing()
    {
        m_gran->clock.moveTo(islandTime(11, 18, 0) - std::int64_t{3} * 365 * msPerDay);
        usedUp(*m_gran, 2);
        m_ruth->clock.moveTo(islandTime(11, 18, 30));
        counted(*m_ruth, 6);
        meetUntilQuiet();
        bothSay({4, 6});
        const auto questions = itemOf(*m_gran, "Fin", "eyes").questions;
        QCOMPARE(questions.size(), std::size_t{1});
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(usecase::answerQuestion(workplace, "Fin", {}, questions.front().id, "before").ok());
        meetUntilQuiet();
        bothSay({6, 6});
    }

    /// A clock in the far future neither spreads nor sticks (events.md 3.3): the next count that
    /// has seen it is the basis.
    void aFarFutureCountIsReplacedByTheNext()
    {
        m_gran->clock.moveTo(islandTime(11, 18, 0) + std::int64_t{30} * 365 * msPerDay);
        counted(*m_gran, 2);
        m_ruth->clock.moveTo(islandTime(11, 19, 0));
        (void)m_ruth->meet(*m_gran);
        counted(*m_ruth, 6);
        meetUntilQuiet();
        bothSay({6, 6});
        usedUp(*m_ruth, 1);
        meetUntilQuiet();
        bothSay({5, 5});
    }

    /// A phone that shows 1970 writes nothing at all, and says so.
    void aClockThatIsNotSetWritesNothing()
    {
        m_gran->clock.moveTo(0);
        usecase::Workplace workplace = m_gran->workplace();
        const Outcome done = usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, 1}});
        QVERIFY(!done.ok() && done.error().code == ErrorCode::ClockUnset);
        QCOMPARE(eyesOn(*m_ruth), std::pair(6, 6));
    }
};

QTEST_APPLESS_MAIN(TestWrongClocks)
#include "tst_wrong_clocks.moc"
