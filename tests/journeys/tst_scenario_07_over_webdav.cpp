#include <QTest>

#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/revision_state.h"
#include "core/usecase/take_out.h"

#include "tests/support/crew_place.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

const std::string maireadsBox = "b-mairead";
const ItemId bands{"bands"};
const ItemId balloon{"balloon"};
const ItemId loops{"loops"};
const ItemId scarf{"scarf"};

usecase::Family familyOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    return *usecase::loadFamily(workplace, "Mairead");
}

usecase::RevisionState stateOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    return **usecase::revisionStateOf(workplace, familyOn(phone));
}

usecase::TodayMenu menuOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    usecase::MenuRequest request;
    request.child = "Mairead";
    return *usecase::suggestToday(workplace, request);
}

/// Entries that may be played today and use the box's own @p item.
int playableWith(Phone &phone, const ItemId &item)
{
    const usecase::TodayMenu menu = menuOn(phone);
    int entries = 0;
    for (const safety::Admitted &admitted : menu.gated.admitted) {
        for (const catalogue::ItemUse &use : admitted.items())
            entries += use.item == item && use.source == catalogue::Source::Box ? 1 : 0;
    }
    return entries;
}

const usecase::RemovedThing *thingOf(const usecase::RevisionState &state, const ItemId &item)
{
    const auto found = std::ranges::find(state.takeOut, item, &usecase::RemovedThing::item);
    return found == state.takeOut.end() ? nullptr : &*found;
}

} // namespace

/// job.md scenario 7, what becomes of the box: Morven changes it at a distance on Monday, Peigi is
/// offline until Tuesday and has counted meanwhile. Over a real WebDAV server.
class TestScenario07OverWebdav : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DavServer> m_server;
    std::unique_ptr<CrewPlace> m_place;
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_peigi;
    std::unique_ptr<CrewPhone> m_dad;
    int m_story = 0;

    bool visit(CrewPhone &phone) { return m_place->everybodyVisits({&phone}, maireadsBox, 1); }
    Outcome revise(std::map<ItemId, int> packed)
    {
        usecase::Workplace workplace = m_morven->workplace();
        return usecase::reviseBox(workplace, "Mairead", {}, packed);
    }
    static std::map<ItemId, int> secondList()
    {
        std::map<ItemId, int> packed = usecase::island::standardBox();
        packed.erase(bands);
        packed.erase(balloon);
        packed[loops] = 6;
        packed[scarf] = 1;
        return packed;
    }
    Outcome takeOut(CrewPhone &phone, const ItemId &item)
    {
        usecase::Workplace workplace = phone.workplace();
        return usecase::confirmTakenOut(workplace, "Mairead", {}, item);
    }
    /// "Rubber bands 6, all back": a play with them, and a count.
    void peigiLogsMondayEvening()
    {
        m_peigi->clock.moveTo(islandTime(25, 18, 0));
        usecase::Workplace workplace = m_peigi->workplace();
        const auto play = usecase::startPlay(workplace, {"Mairead", {"elastic-gate"}, {}, {}});
        QVERIFY(play.ok());
        QVERIFY(usecase::putBack(workplace, *play, {}, {}, {{bands, 6}}).ok());
        QVERIFY(usecase::countBox(workplace, "Mairead", {}, {{bands, 6}}).ok());
    }

private slots:
    void initTestCase()
    {
        m_server = std::make_unique<DavServer>(DavKind::Apache);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
    }
    /// Until Tuesday morning, when Peigi's phone has a signal again.
    void init()
    {
        m_place = std::make_unique<CrewPlace>(*m_server, "mairead" + std::to_string(++m_story));
        m_morven = founderOf(familyOf("Mairead"));
        QVERIFY(m_morven);
        m_peigi = std::make_unique<CrewPhone>("Peigi", store::Role::Parent, "h-mairead");
        m_dad = std::make_unique<CrewPhone>("Dad", store::Role::Parent, "h-mairead");
        for (CrewPhone *phone : {m_peigi.get(), m_dad.get()}) {
            phone->clock.moveTo(islandTime(24, 12, 0));
            QVERIFY(m_morven->letIn(*phone, maireadsBox).ok());
        }
        QVERIFY(
            m_place->everybodyVisits({m_morven.get(), m_peigi.get(), m_dad.get()}, maireadsBox));
        QVERIFY(playableWith(*m_peigi, bands) > 0);
        m_morven->clock.moveTo(islandTime(25, 10, 20)); // during the call
        QVERIFY(revise(secondList()).ok());
        QVERIFY(visit(*m_morven));
        peigiLogsMondayEvening();
        m_peigi->clock.moveTo(islandTime(26, 9, 0));
        QVERIFY(visit(*m_peigi));
    }

    void removalsActAtOnceWhateverWasCounted()
    {
        QCOMPARE(familyOn(*m_peigi).revision->revision.number, 2);
        QCOMPARE(playableWith(*m_peigi, bands), 0);
        QCOMPARE(playableWith(*m_peigi, balloon), 0);
        const usecase::RevisionState state = stateOn(*m_peigi);
        QCOMPARE(state.takeOut.size(), std::size_t{2});
        QVERIFY(thingOf(state, bands) != nullptr && thingOf(state, balloon) != nullptr);
        QCOMPARE(thingOf(state, bands)->pieces, 6); // they are there, and have to go
        QCOMPARE(thingOf(state, balloon)->pieces, 3);
        QCOMPARE(itemOf(*m_peigi, "Mairead", "bands").expected, 0);
        QCOMPARE(menuOn(*m_peigi).menu.offers.size(), std::size_t{3});
    }

    void additionsAreOnTheWayAndNotInTheBox()
    {
        QVERIFY(stateOn(*m_peigi).onTheWay == (std::vector<ItemId>{loops, scarf}));
        const store::ItemRow row = itemOf(*m_peigi, "Mairead", "loops");
        QCOMPARE(row.expected, 6);
        QCOMPARE(row.high, 0);
        QCOMPARE(row.requests.back().step, box::RequestStep::OnItsWay);
        QCOMPARE(playableWith(*m_peigi, loops), 0);
        QCOMPARE(itemOf(*m_peigi, "Mairead", "pegs").low, 6); // what stays is as it was
    }

    void whatWasAddedIsThereOnceItIsCountedIn()
    {
        usecase::Workplace workplace = m_peigi->workplace();
        QVERIFY(usecase::countIn(workplace, "Mairead", {}, loops, 6).ok());
        QVERIFY(stateOn(*m_peigi).onTheWay == std::vector<ItemId>{scarf});
        QVERIFY(playableWith(*m_peigi, loops) > 0); // not hidden for ever
        QVERIFY(
            m_place->everybodyVisits({m_peigi.get(), m_morven.get(), m_dad.get()}, maireadsBox));
        QCOMPARE(itemOf(*m_morven, "Mairead", "loops").low, 6);
        // Dad, who did not know, says the same: it is one parcel.
        m_dad->clock.moveTo(islandTime(27, 9, 0));
        usecase::Workplace dads = m_dad->workplace();
        QVERIFY(usecase::correctCountedIn(dads, "Mairead", {}, loops, 6).ok());
        QVERIFY(m_place->everybodyVisits({m_dad.get(), m_morven.get()}, maireadsBox));
        QCOMPARE(itemOf(*m_morven, "Mairead", "loops").high, 6);
    }

    void mondaysTallyStaysInHistory()
    {
        const usecase::Family family = familyOn(*m_peigi);
        QCOMPARE(family.plays.size(), std::size_t{1});
        QCOMPARE(family.plays.front().activity.value, std::string("elastic-gate"));
        QVERIFY(itemOf(*m_peigi, "Mairead", "bands").counted == dayFrom({2027, 1, 25}));
        QVERIFY(rowsAreThoseOfARefold(m_peigi->database));
    }

    void morvensBoardAwaitsConfirmationWithTheDaysSentAndReceived()
    {
        usecase::RevisionState state = stateOn(*m_morven);
        QVERIFY(state.sent == *dayFrom({2027, 1, 25}));
        QVERIFY(state.received.empty());
        QVERIFY(!state.isConfirmed());
        m_morven->clock.moveTo(islandTime(26, 12, 0));
        QVERIFY(visit(*m_morven));
        state = stateOn(*m_morven);
        QCOMPARE(state.number, 2);
        QVERIFY(!state.isConfirmed()); // received is not done
        QCOMPARE(state.received.size(), std::size_t{1});
        QCOMPARE(state.received.front().person, std::string("Peigi"));
        QVERIFY(state.received.front().day == *dayFrom({2027, 1, 26}));
        QVERIFY(!state.twoLists);
    }

    void onlyPeigisWordTakesThemOut()
    {
        QVERIFY(takeOut(*m_peigi, bands).ok());
        QVERIFY(!stateOn(*m_peigi).isConfirmed());
        QVERIFY(takeOut(*m_peigi, balloon).ok());
        QVERIFY(takeOut(*m_peigi, balloon).ok()); // said twice is once
        QVERIFY(m_place->everybodyVisits({m_peigi.get(), m_morven.get()}, maireadsBox));
        for (CrewPhone *phone : {m_peigi.get(), m_morven.get()}) {
            const usecase::RevisionState state = stateOn(*phone);
            QVERIFY(state.isConfirmed());
            QCOMPARE(thingOf(state, bands)->outBy, std::string("Peigi"));
            QVERIFY(thingOf(state, bands)->outWhen.day == *dayFrom({2027, 1, 26}));
            QCOMPARE(itemOf(*phone, "Mairead", "bands").high, 0);
            QCOMPARE(itemOf(*phone, "Mairead", "balloon").high, 0);
            QVERIFY(rowsAreThoseOfARefold(phone->database));
        }
    }

    /// The tally of a removed item is history and adds nothing (events.md 5, confirmation).
    void dadsTallyOfThursdayWhoKnowsNothingPutsThemNotBack()
    {
        QVERIFY(takeOut(*m_peigi, bands).ok());
        QVERIFY(visit(*m_peigi));
        m_dad->clock.moveTo(islandTime(28, 18, 0));
        usecase::Workplace dads = m_dad->workplace();
        QVERIFY(usecase::countBox(dads, "Mairead", {}, {{bands, 6}}).ok());
        QVERIFY(playableWith(*m_dad, bands) > 0); // nobody has told this phone
        QVERIFY(
            m_place->everybodyVisits({m_dad.get(), m_morven.get(), m_peigi.get()}, maireadsBox));
        for (CrewPhone *phone : {m_dad.get(), m_morven.get(), m_peigi.get()}) {
            QCOMPARE(itemOf(*phone, "Mairead", "bands").high, 0);
            QVERIFY(thingOf(stateOn(*phone), bands)->out);
            QCOMPARE(playableWith(*phone, bands), 0);
        }
    }

    /// A guest who comes now gets the box without what is to be taken out.
    void aGuestIsHandedNothingOfWhatIsToBeTakenOut()
    {
        CrewPhone aunt("Aunt", store::Role::Guest, "h-mairead");
        aunt.clock.moveTo(m_peigi->clock.nowMs());
        QVERIFY(m_peigi->letIn(aunt, maireadsBox, *dayFrom({2027, 1, 30})).ok());
        QVERIFY(m_place->everybodyVisits({m_peigi.get(), &aunt}, maireadsBox));
        QCOMPARE(playableWith(aunt, bands), 0);
        QCOMPARE(playableWith(aunt, balloon), 0);
        QCOMPARE(itemOf(aunt, "Mairead", "bands").high, 0);
        QCOMPARE(itemOf(aunt, "Mairead", "pegs").low, 6);
    }

    void onlyATherapistChangesTheListAndOnlyToAnotherOne()
    {
        usecase::Workplace peigis = m_peigi->workplace();
        const auto refused = usecase::reviseBox(peigis, "Mairead", {}, {{{"pegs"}, 6}});
        QVERIFY(!refused.ok() && refused.error().code == ErrorCode::NotAllowed);
        for (const auto &[packed, code] :
             {std::pair{secondList(), ErrorCode::Invalid},
              std::pair{std::map<ItemId, int>{{{"pegs"}, 0}}, ErrorCode::Invalid},
              std::pair{std::map<ItemId, int>{{{"unicorn"}, 1}}, ErrorCode::NotFound}}) {
            const Outcome done = revise(packed);
            QVERIFY(!done.ok());
            QCOMPARE(done.error().code, code);
        }
        QCOMPARE(familyOn(*m_morven).revision->revision.number, 2);
        const Outcome stays = takeOut(*m_peigi, {"pegs"});
        QVERIFY(!stays.ok() && stays.error().code == ErrorCode::Invalid);
    }

    void theFirstListIsNoChange()
    {
        const auto other = founderOf(familyOf("Fin"));
        usecase::Workplace workplace = other->workplace();
        const auto family = usecase::loadFamily(workplace, "Fin");
        QVERIFY(!*usecase::revisionStateOf(workplace, *family));
    }
};

QTEST_APPLESS_MAIN(TestScenario07OverWebdav)
#include "tst_scenario_07_over_webdav.moc"
