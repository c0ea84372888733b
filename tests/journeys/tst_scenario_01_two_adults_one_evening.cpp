#include <QtTest>

#include "core/store/event_repository.h"
#include "core/store/projector.h"
#include "core/usecase/box_items.h"

#include "tests/support/one_evening.h"

using namespace lidlark;
using namespace lidlark::test;

/// job.md scenario 1: Ruth and Gran, one evening, no signal, Gran's tablet 40 minutes fast.
class TestScenario01 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_ruth;
    std::unique_ptr<Phone> m_gran;

    static usecase::Family familyOn(Phone &phone)
    {
        usecase::Workplace workplace = phone.workplace();
        return *usecase::loadFamily(workplace, "Fin");
    }

    /// 20:00 on both: the home network.
    void meetAtEight()
    {
        m_ruth->clock.moveTo(islandTime(11, 20, 0));
        m_gran->clock.moveTo(islandTime(11, 20, 40));
        (void)m_ruth->meet(*m_gran);
        (void)m_gran->meet(*m_ruth);
        (void)m_ruth->meet(*m_gran);
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        m_gran = std::make_unique<Phone>("Gran", store::Role::Caregiver, "h-fin");
        m_ruth->clock.moveTo(islandTime(10, 12, 0)); // Sunday: both devices meet
        m_gran->clock.moveTo(islandTime(10, 12, 40));
        QVERIFY(m_ruth->meet(*m_morven) > 0);
        QVERIFY(m_gran->meet(*m_morven) > 0);
        m_ruth->clock.moveTo(islandTime(11, 18, 10));
        QVERIFY(!playWithAnEyeUsedUp(*m_ruth, "hidden-harbour-lights").empty());
        m_gran->clock.moveTo(islandTime(11, 18, 25 + 40));
        QVERIFY(!playWithAnEyeUsedUp(*m_gran, "dough-forecast").empty());
        meetAtEight();
    }

    void bothPlaysAreKeptAndTheEyesAreARange()
    {
        for (Phone *phone : {m_ruth.get(), m_gran.get()}) {
            QCOMPARE(familyOn(*phone).plays.size(), std::size_t{2});
            QCOMPARE(eyesOn(*phone), std::pair(4, 5));
            QVERIFY(familyOn(*phone).losses.empty()); // no safety note: used up, not lost
            QCOMPARE(itemOf(*phone, "Fin", "dough").low, 1);
        }
    }

    void oneQuestionToOneAdultInPlainWords()
    {
        QCOMPARE(eyeQuestionsOn(*m_ruth).size(), std::size_t{1});
        QVERIFY(eyeQuestionsOn(*m_ruth) == eyeQuestionsOn(*m_gran));
        const box::Question question = eyeQuestionsOn(*m_ruth).front();
        QCOMPARE(question.askedOf, std::string("Gran"));
        QCOMPARE(wordsOfEyeQuestion(question), std::string(eyeQuestionWords));
        using box::QuestionLook;
        const Day day = *dayFrom({2027, 1, 11});
        QVERIFY(box::lookOf(question, "Gran", m_gran->device.id, day) == QuestionLook::Asks);
        QVERIFY(box::lookOf(question, "Ruth", m_ruth->device.id, day) == QuestionLook::Waits);
        QVERIFY(box::lookOf(question, "Ruth", m_ruth->device.id, day + 1) == QuestionLook::Asks);
    }

    void whateverIsAnsweredIsTheSameEverywhere_data()
    {
        QTest::addColumn<QByteArray>("answer");
        QTest::addColumn<int>("eyes");
        QTest::newRow("two") << QByteArray("two") << 4;
        QTest::newRow("same") << QByteArray("same") << 5;
    }
    void whateverIsAnsweredIsTheSameEverywhere()
    {
        QFETCH(QByteArray, answer);
        QFETCH(int, eyes);
        usecase::Workplace workplace = m_gran->workplace();
        const std::string id = eyeQuestionsOn(*m_gran).front().id;
        QVERIFY(usecase::answerQuestion(workplace, "Fin", "Gran", id, answer.toStdString()).ok());
        QCOMPARE(eyesOn(*m_gran), std::pair(eyes, eyes));
        QVERIFY(m_ruth->meet(*m_gran) > 0);
        QCOMPARE(eyesOn(*m_ruth), std::pair(eyes, eyes));
        QCOMPARE(eyeQuestionsOn(*m_ruth).front().answer, answer.toStdString());
        QCOMPARE(eyeQuestionsOn(*m_ruth).front().answeredBy, std::string("Gran"));
        QCOMPARE(m_ruth->meet(*m_gran), 0); // sending again changes nothing
        QCOMPARE(eyesOn(*m_ruth), std::pair(eyes, eyes));
        for (Phone *phone : {m_ruth.get(), m_gran.get()}) {
            const auto matches = store::Projector(phone->database).matchesRefold();
            QVERIFY(matches && *matches);
        }
    }

    void theSameAnswerAgainChangesNothingAndAnotherIsRefused()
    {
        usecase::Workplace workplace = m_gran->workplace();
        const std::string id = eyeQuestionsOn(*m_gran).front().id;
        QVERIFY(usecase::answerQuestion(workplace, "Fin", "Gran", id, "two").ok());
        const auto events = *store::EventRepository(m_gran->database).count();
        QVERIFY(usecase::answerQuestion(workplace, "Fin", "Gran", id, "two").ok());
        QCOMPARE(*store::EventRepository(m_gran->database).count(), events);
        const Outcome other = usecase::answerQuestion(workplace, "Fin", "Gran", id, "same");
        QVERIFY(!other.ok());
        QVERIFY(other.error().code == ErrorCode::AlreadyAnswered);
        QCOMPARE(other.error().detail, std::string("Gran"));
        const Outcome odd = usecase::answerQuestion(workplace, "Fin", "Gran", id, "perhaps");
        QVERIFY(!odd.ok() && odd.error().code == ErrorCode::Invalid);
    }

    /// Offers use the low end (events.md 6.5).
    void offersCountOnTheLowEnd()
    {
        QCOMPARE(usecase::boxStateOf(familyOn(*m_ruth), realCatalogue(), *dayFrom({2027, 1, 11}))
                     .items.at({"eyes"})
                     .low,
                 4);
    }
};

QTEST_APPLESS_MAIN(TestScenario01)
#include "tst_scenario_01_two_adults_one_evening.moc"
