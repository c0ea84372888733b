#include <QTest>

#include "core/usecase/check_in.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/keep_limits.h"

#include "tests/support/crew_place.h"
#include "tests/support/one_evening.h"

using namespace lidlark;
using namespace lidlark::test;
using enum journal::LaneKind;

namespace {

const std::string finsBox = "b-fin";

} // namespace

/// job.md D7 with the clock moved on, over a whole crew: what has had its time goes from every
/// phone of the home and from the server (events.md 9).
class TestKeepLimitsOverWebdav : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DavServer> m_server;
    std::unique_ptr<CrewPlace> m_place;
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_ruth;
    std::unique_ptr<CrewPhone> m_gran;
    int m_story = 0;

    bool everybodyVisits(int times = 2)
    {
        return m_place->everybodyVisits({m_morven.get(), m_ruth.get(), m_gran.get()}, finsBox,
                                        times);
    }
    /// So many days after 11 January, on every phone, and all of them meet there.
    void itIsDay(int after)
    {
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()}) {
            phone->clock.moveTo(islandTime(11 + after, 9, 0));
            usecase::Workplace workplace = phone->workplace();
            QVERIFY(usecase::sayPlace(workplace, "Fin", "h-fin", "at home").ok());
        }
        QVERIFY(everybodyVisits());
    }
    void everybodyKeepsLimits()
    {
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()}) {
            usecase::Workplace workplace = phone->workplace();
            QVERIFY(usecase::keepLimits(workplace).ok());
        }
        QVERIFY(everybodyVisits(3));
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()})
            QVERIFY(rowsAreThoseOfARefold(phone->database));
    }
    /// A phone that comes in today: all it holds, it has from the server.
    std::string whatANewcomerFinds(journal::LaneKind kind)
    {
        CrewPhone gregor("Gregor", store::Role::Parent, "h-fin");
        gregor.clock.moveTo(m_ruth->clock.nowMs());
        if (!m_ruth->letIn(gregor, finsBox) ||
            !m_place->everybodyVisits({m_ruth.get(), m_gran.get(), &gregor}, finsBox))
            return "nothing could be read";
        return eventsIn(gregor.database, kind);
    }
    static bool holds(const std::string &text, const char *word)
    {
        return text.find(word) != std::string::npos;
    }

private slots:
    void initTestCase()
    {
        m_server = std::make_unique<DavServer>(DavKind::Apache);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
    }
    /// Monday 11 January: a check-in and a play on each phone of the home.
    void init()
    {
        m_place = std::make_unique<CrewPlace>(*m_server, "fin" + std::to_string(++m_story));
        m_morven = founderOf(familyOf("Fin"));
        QVERIFY(m_morven);
        m_ruth = std::make_unique<CrewPhone>("Ruth", store::Role::Parent, "h-fin");
        m_gran = std::make_unique<CrewPhone>("Gran", store::Role::Caregiver, "h-fin");
        QVERIFY(m_morven->letIn(*m_ruth, finsBox).ok());
        QVERIFY(m_morven->letIn(*m_gran, finsBox).ok());
        QVERIFY(everybodyVisits());
        for (const auto &[phone, kite, activity] :
             {std::tuple{m_ruth.get(), checkin::Kite::Whirling, "hidden-harbour-lights"},
              std::tuple{m_gran.get(), checkin::Kite::Resting, "dough-forecast"}}) {
            phone->clock.moveTo(islandTime(11, 18, 0));
            usecase::Workplace workplace = phone->workplace();
            QVERIFY(usecase::checkIn(workplace, "Fin", kite, checkin::ShownBy::Child).ok());
            QVERIFY(!playWithAnEyeUsedUp(*phone, activity).empty());
        }
        QVERIFY(everybodyVisits());
        QVERIFY(holds(eventsIn(m_gran->database, CheckIns), "whirling"));
    }

    void checkInsGoAfterNinetyDaysAndNotBefore()
    {
        itIsDay(90);
        everybodyKeepsLimits();
        for (CrewPhone *phone : {m_ruth.get(), m_gran.get()}) {
            QVERIFY(holds(eventsIn(phone->database, CheckIns), "whirling"));
            QVERIFY(holds(eventsIn(phone->database, CheckIns), "resting"));
        }
        itIsDay(91);
        const auto before = m_place->files();
        everybodyKeepsLimits();
        for (CrewPhone *phone : {m_ruth.get(), m_gran.get()}) {
            QVERIFY(!holds(eventsIn(phone->database, CheckIns), "check-in\""));
            QVERIFY(holds(eventsIn(phone->database, Home), "hidden-harbour-lights")); // a play
        }
        // On the server both phones' old files are gone.
        const auto after = m_place->files();
        int gone = 0;
        for (const std::string &path : before)
            gone += after.contains(path) ? 0 : 1;
        QVERIFY2(gone >= 2, qPrintable(QString::number(gone)));
        const std::string found = whatANewcomerFinds(CheckIns);
        QVERIFY2(!holds(found, "whirling") && !holds(found, "resting"), found.c_str());
    }

    /// What is told again is known to everybody as the same: nobody is alarmed, nothing comes back.
    void whatWasTakenAwayComesNotBack()
    {
        itIsDay(91);
        usecase::Workplace ruths = m_ruth->workplace();
        QVERIFY(usecase::keepLimits(ruths).ok()); // hers alone, first
        QVERIFY(everybodyVisits());
        QVERIFY(!holds(eventsIn(m_ruth->database, CheckIns), "whirling"));
        QVERIFY(!holds(eventsIn(m_ruth->database, CheckIns), "resting"));
        everybodyKeepsLimits();
        QVERIFY(!holds(eventsIn(m_gran->database, CheckIns), "resting"));
    }

    void playsGoAfterTwelveMonthsAndTheBoxStays()
    {
        itIsDay(366);
        everybodyKeepsLimits();
        QVERIFY(holds(eventsIn(m_gran->database, Home), "hidden-harbour-lights"));
        itIsDay(367);
        const auto before = m_place->files();
        everybodyKeepsLimits();
        for (CrewPhone *phone : {m_ruth.get(), m_gran.get()}) {
            QVERIFY(!holds(eventsIn(phone->database, Home), "hidden-harbour-lights"));
            QVERIFY(!holds(eventsIn(phone->database, Home), "dough-forecast"));
            QCOMPARE(eyesOn(*phone), std::pair(4, 5)); // the box's own ledger is whole
        }
        QCOMPARE(eyesOn(*m_morven), std::pair(4, 5));
        const auto after = m_place->files();
        QVERIFY(!std::ranges::includes(after, before));
        const std::string found = whatANewcomerFinds(Home);
        QVERIFY2(!holds(found, "hidden-harbour-lights"), found.c_str());
    }

    /// One clock in 2100 expires nothing (events.md 9, the crew's day).
    void oneClockFarAheadTakesNothingAway()
    {
        m_gran->clock.moveTo(islandTime(11 + 3000, 9, 0));
        usecase::Workplace grans = m_gran->workplace();
        QVERIFY(usecase::sayPlace(grans, "Fin", "h-fin", "at home").ok());
        (void)m_place->visit(*m_gran, finsBox);
        (void)m_place->visit(*m_ruth, finsBox);
        for (CrewPhone *phone : {m_ruth.get(), m_gran.get()}) {
            usecase::Workplace workplace = phone->workplace();
            QVERIFY(usecase::keepLimits(workplace).ok());
            QVERIFY(holds(eventsIn(phone->database, CheckIns), "whirling"));
            QVERIFY(holds(eventsIn(phone->database, Home), "hidden-harbour-lights"));
        }
    }
};

QTEST_APPLESS_MAIN(TestKeepLimitsOverWebdav)
#include "tst_keep_limits_over_webdav.moc"
