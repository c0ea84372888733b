#include <QTest>

#include "core/usecase/check_in.h"
#include "core/usecase/own_notes.h"

#include "tests/support/crew_place.h"
#include "tests/support/two_homes.h"

using namespace lidlark;
using namespace lidlark::test;
using enum journal::LaneKind;

namespace {

const std::string effiesBox = "b-effie";

} // namespace

/// job.md scenario 12 between two homes that share one folder on a real WebDAV server, and each
/// their own lanes in it.
class TestScenario12OverWebdav : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DavServer> m_server;
    std::unique_ptr<CrewPlace> m_place;
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_kirsty;
    std::unique_ptr<CrewPhone> m_aaron;
    int m_story = 0;

    bool everybodyVisits()
    {
        return m_place->everybodyVisits({m_aaron.get(), m_kirsty.get(), m_morven.get()}, effiesBox);
    }
    /// Sunday at Kirsty's; Monday at Aaron's, and no box in the bag.
    void startStory()
    {
        m_place = std::make_unique<CrewPlace>(*m_server, "effie" + std::to_string(++m_story));
        usecase::island::Family family = familyOf("Effie");
        family.goals = familyOf("Fin").goals;
        m_morven = founderOf(family);
        QVERIFY(m_morven);
        m_kirsty = std::make_unique<CrewPhone>("Kirsty", store::Role::Parent, "h-effie-mum");
        m_aaron = std::make_unique<CrewPhone>("Aaron", store::Role::Parent, "h-effie-dad");
        for (CrewPhone *phone : {m_kirsty.get(), m_aaron.get()}) {
            phone->clock.moveTo(islandTime(10, 18, 0));
            QVERIFY(m_morven->letIn(*phone, effiesBox).ok());
        }
        QVERIFY(everybodyVisits());
        QVERIFY(effiesBoxIs(*m_kirsty, "h-effie-mum", "at Mum's"));
        QVERIFY(m_place->everybodyVisits({m_kirsty.get()}, effiesBox, 1));
        m_aaron->clock.moveTo(islandTime(11, 18, 0));
        QVERIFY(m_place->everybodyVisits({m_aaron.get()}, effiesBox, 1));
    }
    void boxArrivesOnWednesday()
    {
        m_aaron->clock.moveTo(islandTime(13, 17, 30));
        QVERIFY(effiesBoxIs(*m_aaron, "h-effie-dad", "at Dad's"));
    }
    /// Aaron's own: plays, a note, a check-in.
    void aaronLives(int plays)
    {
        for (int i = 0; i < plays; ++i)
            QVERIFY(effiePlays(*m_aaron, "slow-oars"));
        if (plays == 0)
            return;
        usecase::Workplace workplace = m_aaron->workplace();
        QVERIFY(usecase::keepNote(workplace, "Effie", "Only with me she laughs").ok());
        QVERIFY(
            usecase::checkIn(workplace, "Effie", checkin::Kite::Whirling, checkin::ShownBy::Child)
                .ok());
    }
    /// What Kirsty's phone holds that Aaron's wrote, as far as it can tell anything: lane and kind.
    std::vector<std::string> aaronsOnKirstys()
    {
        std::vector<std::string> all;
        const auto events = *store::EventRepository(m_kirsty->database).all();
        for (const journal::Event &event : events) {
            if (event.device == m_aaron->device.id)
                all.push_back(toText(event.lane) + " " +
                              std::string(journal::kindNames.of(event.kind)) + " " +
                              std::to_string(event.counter));
        }
        std::ranges::sort(all);
        return all;
    }

private slots:
    void initTestCase()
    {
        m_server = std::make_unique<DavServer>(DavKind::Apache);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
    }
    void init() { startStory(); }

    void aaronSeesWhereTheBoxIsWhoSaidSoAndWhen()
    {
        const auto family = effiesFamily(*m_aaron);
        QVERIFY(family.place);
        QCOMPARE(family.place->place, std::string("h-effie-mum"));
        QCOMPARE(family.place->words, std::string("at Mum's"));
        QCOMPARE(family.place->author, std::string("Kirsty"));
        QVERIFY(family.place->when.day == *dayFrom({2027, 1, 10}));
    }

    void notHereOffersWhatIsSafeForABaby()
    {
        const auto menu = effiesMenu(*m_aaron, true);
        QCOMPARE(menu.menu.offers.size(), std::size_t{3});
        QCOMPARE(unfitForABabyWithoutTheBox(menu), std::string());
    }

    void onWednesdayTheSameBoxWithTheStricterGate()
    {
        QVERIFY(isAdmitted(effiesMenu(*m_kirsty), "hidden-harbour-lights"));
        boxArrivesOnWednesday();
        QVERIFY(everybodyVisits());
        const auto menu = effiesMenu(*m_aaron);
        QVERIFY(isAdmitted(menu, "slow-oars"));
        QVERIFY(!unfitForABabyWithoutTheBox(menu).empty()); // with things of the box again
        QVERIFY(!isAdmitted(menu, "hidden-harbour-lights"));
        // The same box, with the same counts.
        const usecase::Family kirstys = effiesFamily(*m_kirsty);
        for (const store::ItemRow &row : kirstys.items)
            QCOMPARE(itemOf(*m_aaron, "Effie", row.item.value).low, row.low);
    }

    void kirstySeesPlaceAndCounts()
    {
        boxArrivesOnWednesday();
        usecase::Workplace workplace = m_aaron->workplace();
        QVERIFY(usecase::countBox(workplace, "Effie", {}, {{{"pegs"}, 5}}).ok());
        QVERIFY(everybodyVisits());
        QCOMPARE(effiesFamily(*m_kirsty).place->words, std::string("at Dad's"));
        QCOMPARE(effiesFamily(*m_kirsty).place->author, std::string("Aaron"));
        QCOMPARE(itemOf(*m_kirsty, "Effie", "pegs").low, 5);
    }

    void kirstySeesNothingOfAaronsOwn()
    {
        boxArrivesOnWednesday();
        aaronLives(3);
        QVERIFY(everybodyVisits());
        const usecase::Family family = effiesFamily(*m_kirsty);
        QVERIFY(family.plays.empty());
        QVERIFY(family.outcomes.empty());
        QVERIFY(family.checkIns.empty());
        const auto events = *store::EventRepository(m_kirsty->database).all();
        for (const journal::Event &event : events)
            QVERIFY(event.lane.scope != "h-effie-dad");
        QCOMPARE(eventsIn(m_kirsty->database, Notes), std::string());
        QCOMPARE(eventsIn(m_morven->database, Notes), std::string());
        // Nor has her phone a key to it.
        auto query = m_kirsty->database.prepare(
            "SELECT count(*) FROM handed_key WHERE lane LIKE '%:h-effie-dad'");
        QVERIFY(query.ok() && *query->step());
        QCOMPARE(query->number(0), std::int64_t{0});
        QVERIFY(rowsAreThoseOfARefold(m_kirsty->database));
    }

    /// job.md D8: nor can she infer it. Three evenings or none look the same from her phone, to the
    /// very numbers of his events.
    void threePlaysAndNoneLookTheSame()
    {
        boxArrivesOnWednesday();
        QVERIFY(everybodyVisits());
        const auto none = aaronsOnKirstys();
        startStory();
        boxArrivesOnWednesday();
        aaronLives(3);
        QVERIFY(everybodyVisits());
        QVERIFY(!none.empty());
        QCOMPARE(aaronsOnKirstys(), none);
    }

    void goalsAreSeenByBothAndEachHasTheirOwnSheet()
    {
        QVERIFY(!eventsIn(m_kirsty->database, Goals).empty());
        QCOMPARE(eventsIn(m_kirsty->database, Goals), eventsIn(m_aaron->database, Goals));
        QVERIFY(!effiesFamily(*m_kirsty).child.goals.empty());
        QVERIFY(!effiesFamily(*m_aaron).child.goals.empty());
        QCOMPARE(effiesFamily(*m_aaron).sheet->pets, true);
        QCOMPARE(effiesFamily(*m_kirsty).sheet->pets, false);
        QCOMPARE(eventsIn(m_kirsty->database, Safety).find("Jamie"), std::string::npos);
    }

    void kirstysLateAllBackDoesNotMoveTheBoxHome()
    {
        boxArrivesOnWednesday();
        m_kirsty->clock.moveTo(islandTime(13, 18, 0)); // offline since Sunday
        QVERIFY(effiePlays(*m_kirsty, "slow-oars"));
        QVERIFY(everybodyVisits());
        for (CrewPhone *phone : {m_aaron.get(), m_kirsty.get(), m_morven.get()}) {
            QCOMPARE(effiesFamily(*phone).place->place, std::string("h-effie-dad"));
            QVERIFY(rowsAreThoseOfARefold(phone->database));
        }
    }
};

QTEST_APPLESS_MAIN(TestScenario12OverWebdav)
#include "tst_scenario_12_over_webdav.moc"
