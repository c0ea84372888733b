#include <QTest>

#include "tests/support/crew_place.h"
#include "tests/support/one_evening.h"

using namespace lidlark;
using namespace lidlark::test;

Q_DECLARE_METATYPE(lidlark::test::DavKind)

namespace {

const std::string finsBox = "b-fin";

} // namespace

/// job.md scenario 1 between two phones that share nothing but a family's WebDAV folder: Ruth and
/// Gran, one evening, no signal, Gran's tablet 40 minutes fast.
class TestScenario01OverWebdav : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DavServer> m_server;
    std::unique_ptr<CrewPlace> m_place;
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_ruth;
    std::unique_ptr<CrewPhone> m_gran;

    /// On both clocks; Gran's is 40 minutes ahead.
    void itIs(int day, int hour, int minute)
    {
        m_ruth->clock.moveTo(islandTime(day, hour, minute));
        m_gran->clock.moveTo(islandTime(day, hour, minute + 40));
    }
    bool bothVisit(int times = 2)
    {
        return m_place->everybodyVisits({m_ruth.get(), m_gran.get()}, finsBox, times);
    }
    static usecase::Family familyOn(Phone &phone)
    {
        usecase::Workplace workplace = phone.workplace();
        return *usecase::loadFamily(workplace, "Fin");
    }

private slots:
    void initTestCase_data()
    {
        QTest::addColumn<DavKind>("kind");
        QTest::newRow("Apache over TLS") << DavKind::Apache;
        QTest::newRow("lighttpd") << DavKind::Lighttpd;
    }
    void init()
    {
        QFETCH_GLOBAL(DavKind, kind);
        m_server = std::make_unique<DavServer>(kind);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
        m_place = std::make_unique<CrewPlace>(*m_server, "fin");
        m_morven = founderOf(familyOf("Fin"));
        QVERIFY(m_morven);
        m_ruth = std::make_unique<CrewPhone>("Ruth", store::Role::Parent, "h-fin");
        m_gran = std::make_unique<CrewPhone>("Gran", store::Role::Caregiver, "h-fin");
        QVERIFY(m_morven->letIn(*m_ruth, finsBox).ok());
        QVERIFY(m_morven->letIn(*m_gran, finsBox).ok());
        QVERIFY(m_place->everybodyVisits({m_morven.get()}, finsBox));
        itIs(10, 12, 0); // Sunday: both last met
        QVERIFY(bothVisit());
        itIs(11, 18, 10);
        QVERIFY(!playWithAnEyeUsedUp(*m_ruth, "hidden-harbour-lights").empty());
        itIs(11, 18, 25);
        QVERIFY(!playWithAnEyeUsedUp(*m_gran, "dough-forecast").empty());
        itIs(11, 20, 0); // the home network
        QVERIFY(bothVisit());
    }

    void bothPlaysAreKeptAndTheEyesAreFourOrFive()
    {
        for (CrewPhone *phone : {m_ruth.get(), m_gran.get()}) {
            const usecase::Family family = familyOn(*phone);
            QCOMPARE(family.plays.size(), std::size_t{2});
            QCOMPARE(eyesOn(*phone), std::pair(4, 5));
            QCOMPARE(itemOf(*phone, "Fin", "dough").low, 1);
            // No safety note: used up, not lost.
            QVERIFY(family.losses.empty());
            QVERIFY(!usecase::boxStateOf(family, realCatalogue(), *dayFrom({2027, 1, 11}))
                         .floorNoteOpen);
            QVERIFY(rowsAreThoseOfARefold(phone->database));
        }
    }

    void oneQuestionToOneAdultInPlainWords()
    {
        QCOMPARE(eyeQuestionsOn(*m_ruth).size(), std::size_t{1});
        QVERIFY(eyeQuestionsOn(*m_ruth) == eyeQuestionsOn(*m_gran));
        const box::Question question = eyeQuestionsOn(*m_ruth).front();
        QCOMPARE(wordsOfEyeQuestion(question), std::string(eyeQuestionWords));
        using box::QuestionLook;
        const Day day = *dayFrom({2027, 1, 11});
        QVERIFY(box::lookOf(question, "Gran", m_gran->device.id, day) == QuestionLook::Asks);
        QVERIFY(box::lookOf(question, "Ruth", m_ruth->device.id, day) == QuestionLook::Waits);
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
        QVERIFY(bothVisit());
        QVERIFY(m_place->everybodyVisits({m_morven.get()}, finsBox));
        for (CrewPhone *phone : {m_ruth.get(), m_gran.get(), m_morven.get()}) {
            QCOMPARE(eyesOn(*phone), std::pair(eyes, eyes));
            QCOMPARE(eyeQuestionsOn(*phone).front().answer, answer.toStdString());
            QCOMPARE(eyeQuestionsOn(*phone).front().answeredBy, std::string("Gran"));
            QVERIFY(rowsAreThoseOfARefold(phone->database));
        }
    }

    void sendingAgainChangesNothing()
    {
        QVERIFY(bothVisit(3)); // until everybody knows that everybody knows
        const auto files = m_place->files();
        const std::string box = eventsIn(m_ruth->database, journal::LaneKind::Box);
        QVERIFY(!files.empty());
        for (int time = 0; time < 2; ++time) {
            for (CrewPhone *phone : {m_ruth.get(), m_gran.get()}) {
                const sync::Exchanged again = m_place->visit(*phone, finsBox);
                QCOMPARE(again.received, 0);
                QCOMPARE(again.shared, 0);
                QCOMPARE(eyesOn(*phone), std::pair(4, 5));
            }
        }
        QVERIFY(m_place->files() == files);
        QCOMPARE(eventsIn(m_ruth->database, journal::LaneKind::Box), box);
        QCOMPARE(eventsIn(m_gran->database, journal::LaneKind::Box), box);
    }

    /// The server's disk shows neither a name nor a word of it.
    void whoeverRunsTheServerReadsNothing()
    {
        for (const std::string &path : m_place->files()) {
            std::ifstream file(path, std::ios::binary);
            std::ostringstream bytes;
            bytes << path << file.rdbuf();
            for (const char *word : {"Fin", "Ruth", "Gran", "eyes", "used-up", "hidden-harbour"})
                QCOMPARE(bytes.str().find(word), std::string::npos);
        }
    }
};

QTEST_APPLESS_MAIN(TestScenario01OverWebdav)
#include "tst_scenario_01_over_webdav.moc"
