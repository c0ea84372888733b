#include <QTest>

#include "tests/support/crew_place.h"
#include "tests/support/one_evening.h"

using namespace lidlark;
using namespace lidlark::test;
using enum journal::LaneKind;

namespace {

const std::string finsBox = "b-fin";

} // namespace

/// What a family's server does to its phones: it is switched off in the middle, comes back, lets
/// nobody in for a while, forgets. Nothing is lost, and they go on.
class TestCrewOverWebdavTrouble : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DavServer> m_server;
    std::unique_ptr<CrewPlace> m_place;
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_ruth;
    std::unique_ptr<CrewPhone> m_gran;
    int m_story = 0;

    bool everybodyVisits()
    {
        return m_place->everybodyVisits({m_morven.get(), m_ruth.get(), m_gran.get()}, finsBox, 3);
    }
    void everybodyHoldsTheSame()
    {
        QCOMPARE(eventsIn(m_gran->database, Box), eventsIn(m_ruth->database, Box));
        QCOMPARE(eventsIn(m_morven->database, Box), eventsIn(m_ruth->database, Box));
        QCOMPARE(eventsIn(m_gran->database, Home), eventsIn(m_ruth->database, Home));
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()}) {
            QVERIFY(rowsAreThoseOfARefold(phone->database));
            QCOMPARE(eyesOn(*phone), std::pair(4, 5));
        }
    }
    void bothPlayOnMonday()
    {
        m_ruth->clock.moveTo(islandTime(11, 18, 10));
        m_gran->clock.moveTo(islandTime(11, 18, 25));
        QVERIFY(!playWithAnEyeUsedUp(*m_ruth, "hidden-harbour-lights").empty());
        QVERIFY(!playWithAnEyeUsedUp(*m_gran, "dough-forecast").empty());
    }
    /// @param steps after so many of them the current fails.
    sync::Exchanged visitUntilTheCurrentFails(CrewPhone &phone, int steps)
    {
        sync::WebdavStorage storage(m_place->address());
        sync::Post post = phone.post();
        const auto report = sync::exchange(post, finsBox, storage, [this, &steps] {
            if (steps-- == 0)
                m_server->kill();
            return true;
        });
        return report ? *report : sync::Exchanged{};
    }

private slots:
    void init()
    {
        if (!m_server)
            m_server = std::make_unique<DavServer>(DavKind::Apache);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
        m_place = std::make_unique<CrewPlace>(*m_server, "fin" + std::to_string(++m_story));
        m_morven = founderOf(familyOf("Fin"));
        QVERIFY(m_morven);
        m_ruth = std::make_unique<CrewPhone>("Ruth", store::Role::Parent, "h-fin");
        m_gran = std::make_unique<CrewPhone>("Gran", store::Role::Caregiver, "h-fin");
        QVERIFY(m_morven->letIn(*m_ruth, finsBox).ok());
        QVERIFY(m_morven->letIn(*m_gran, finsBox).ok());
        QVERIFY(everybodyVisits());
        bothPlayOnMonday();
    }

    void killedAtAnyStepAndBackNothingIsLost_data()
    {
        QTest::addColumn<int>("steps");
        for (const int steps : {0, 1, 2})
            QTest::addRow("after %d steps", steps) << steps;
    }
    void killedAtAnyStepAndBackNothingIsLost()
    {
        QFETCH(int, steps);
        const std::string before = eventsIn(m_ruth->database, Home);
        const sync::Exchanged report = visitUntilTheCurrentFails(*m_ruth, steps);
        QVERIFY(report.trouble == sync::Trouble::Unreachable);
        QVERIFY(eventsIn(m_ruth->database, Home).find(before) != std::string::npos);
        QVERIFY(m_place->visit(*m_gran, finsBox).trouble == sync::Trouble::Unreachable);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
        QVERIFY(everybodyVisits());
        everybodyHoldsTheSame();
    }

    void aWrongPasswordLosesNothingAndTheRightOneGoesOn()
    {
        sync::ServerAddress wrong = m_place->address();
        wrong.password = "yesterday's";
        sync::WebdavStorage storage(wrong);
        const auto files = m_place->files();
        for (int time = 0; time < 2; ++time) {
            const sync::Exchanged report = m_ruth->exchange(finsBox, storage);
            QVERIFY(report.trouble == sync::Trouble::Refused);
            QCOMPARE(report.shared, 0);
        }
        QVERIFY(m_place->files() == files);
        QCOMPARE(eyesOn(*m_ruth), std::pair(5, 5)); // her own play is as it was
        QVERIFY(everybodyVisits());
        everybodyHoldsTheSame();
    }

    /// Somebody tidied the server up: each phone brings its own part again, and says so.
    void aFolderThatWasEmptiedIsFilledAgain()
    {
        QVERIFY(everybodyVisits());
        QVERIFY(everybodyVisits());
        const auto before = m_place->files();
        for (const std::string &path : before)
            std::filesystem::remove(path);
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()}) {
            phone->clock.moveTo(phone->clock.nowMs() + msPerDay); // it looks once a day
            const sync::Exchanged report = m_place->visit(*phone, finsBox);
            QVERIFY(!report.trouble);
        }
        for (const std::string &path : before)
            QVERIFY2(m_place->files().contains(path), path.c_str());
        QVERIFY(everybodyVisits());
        everybodyHoldsTheSame();
    }
};

QTEST_APPLESS_MAIN(TestCrewOverWebdavTrouble)
#include "tst_crew_over_webdav_trouble.moc"
