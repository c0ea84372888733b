#include <QTest>

#include "core/store/recording.h"
#include "core/sync/invite.h"
#include "core/sync/join_words.h"
#include "core/usecase/check_in.h"
#include "core/usecase/own_notes.h"
#include "core/usecase/play_activity.h"

#include "tests/support/crew_place.h"
#include "tests/support/new_phone.h"

using namespace lidlark;
using namespace lidlark::test;
using enum journal::LaneKind;

namespace {

const std::string skyesBox = "b-skye";
const ItemId crayons{"crayons"};

/// As Lorna reads them out.
std::string readOut(const sync::Invited &invited)
{
    std::string text;
    for (const std::string_view word : sync::wordsOf(invited.secret))
        text.append(text.empty() ? "" : " ").append(word);
    return text;
}

store::ItemRow skyes(usecase::Workplace workplace, const ItemId &item)
{
    const auto family = usecase::loadFamily(workplace, "Skye");
    const auto row = std::ranges::find(family->items, item, &store::ItemRow::item);
    return row == family->items.end() ? store::ItemRow{} : *row;
}

} // namespace

/// job.md scenario 11, what is not on the screen: Grandad comes in for a week by nine typed words,
/// plays, and sees nothing of the family's own. Over a real WebDAV server.
class TestScenario11OverWebdav : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DavServer> m_server;
    std::unique_ptr<CrewPlace> m_place;
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_lorna;
    MemoryKeeper m_lornasKeys;
    std::unique_ptr<NewPhone> m_archie;
    std::optional<sync::Invited> m_invited;
    int m_story = 0;

    [[nodiscard]] std::unique_ptr<sync::WebdavStorage> line() const
    {
        return std::make_unique<sync::WebdavStorage>(m_place->address());
    }
    /// What the family has of its own before he comes.
    void liveBefore()
    {
        usecase::Workplace workplace = m_lorna->workplace();
        const auto play =
            usecase::startPlay(workplace, {"Skye", {"dough-forecast"}, {}, checkin::Kite::Steady});
        QVERIFY(play.ok());
        QVERIFY(usecase::putBack(workplace, *play, {}, {{{"eyes"}, box::ExceptionKind::UsedUp, 1}})
                    .ok());
        QVERIFY(usecase::keepNote(workplace, "Skye", "Slept badly").ok());
    }
    /// She accepts whoever knocks, and leaves what is needed to come in.
    bool lornaAccepts()
    {
        const auto storage = line();
        sync::Post post = m_lorna->post();
        const auto invited = sync::invited(post, skyesBox);
        if (!invited || !*invited)
            return false;
        const auto knock = sync::lookForKnock(**invited, *storage);
        if (sync::troubleIn(knock) || !std::get<std::optional<sync::Knock>>(knock))
            return false;
        m_knock = std::get<std::optional<sync::Knock>>(knock);
        return sync::accept(post, skyesBox, **invited, *m_knock).ok() && lornaShares();
    }
    bool lornaShares()
    {
        const auto storage = line();
        sync::Post post = m_lorna->post();
        const auto shared = sync::shareAll(post, sync::Match::Well, m_lornasKeys, *storage);
        return shared && !shared->boxes.at(skyesBox).trouble;
    }
    bool archieShares()
    {
        const auto storage = line();
        const auto shared = m_archie->share(*storage);
        return shared && !shared->boxes.at(skyesBox).trouble &&
               shared->boxes.at(skyesBox).findings.empty();
    }
    void archieComesIn()
    {
        const auto storage = line();
        const auto joining = m_archie->type(readOut(*m_invited), "Grandad");
        QVERIFY(joining.ok());
        QVERIFY(m_archie->look(*storage) == sync::Step::Waiting);
        QVERIFY(lornaAccepts());
        QVERIFY(m_knock->same == joining->same); // both phones show the same three words
        QVERIFY(m_archie->look(*storage) == sync::Step::In);
        QVERIFY(archieShares());
    }
    /// "Crayon broken", after a play.
    void archiePlays()
    {
        usecase::Workplace workplace = m_archie->workplace();
        const auto play = usecase::startPlay(workplace, {"Skye", {"two-hand-tides"}, {}, {}});
        QVERIFY(play.ok());
        QVERIFY(usecase::putBack(workplace, *play, {}, {{crayons, box::ExceptionKind::Broken, 1}})
                    .ok());
    }
    std::optional<sync::Knock> m_knock;

private slots:
    void initTestCase()
    {
        m_server = std::make_unique<DavServer>(DavKind::Apache);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
    }
    /// Friday 15 January, 16:00: Lorna has asked for a code.
    void init()
    {
        m_place = std::make_unique<CrewPlace>(*m_server, "skye" + std::to_string(++m_story));
        usecase::island::Family family = familyOf("Skye");
        family.goals = familyOf("Fin").goals;
        QVERIFY(!family.goals.empty());
        m_morven = founderOf(family);
        QVERIFY(m_morven);
        m_lorna = std::make_unique<CrewPhone>("Lorna", store::Role::Parent, "h-skye");
        QVERIFY(m_morven->letIn(*m_lorna, skyesBox).ok());
        for (CrewPhone *phone : {m_morven.get(), m_lorna.get()})
            phone->clock.moveTo(islandTime(15, 16, 0));
        QVERIFY(m_place->everybodyVisits({m_morven.get(), m_lorna.get()}, skyesBox));
        liveBefore();
        QVERIFY(m_place->everybodyVisits({m_lorna.get()}, skyesBox, 1));
        sync::Post post = m_lorna->post();
        const auto invited =
            sync::invite(post, skyesBox, {crew::Role::Guest, {"h-skye"}, *dayFrom({2027, 1, 21})});
        QVERIFY(invited.ok());
        m_invited = *invited;
        m_archie = std::make_unique<NewPhone>("Archie", islandTime(15, 16, 2));
    }

    void heGetsThreeOffersAndTheBoxAsItStands()
    {
        archieComesIn();
        usecase::Workplace workplace = m_archie->workplace();
        QCOMPARE(workplace.device.person, std::string("Grandad"));
        QCOMPARE(workplace.device.role, store::Role::Guest);
        QVERIFY(workplace.device.until == dayFrom({2027, 1, 21}));
        usecase::MenuRequest request;
        request.child = "Skye";
        QCOMPARE(usecase::suggestToday(workplace, request)->menu.offers.size(), std::size_t{3});
        QCOMPARE(skyes(workplace, {"eyes"}).low, 5);
        QCOMPARE(skyes(workplace, crayons).low, 4);
        QVERIFY(rowsAreThoseOfARefold(m_archie->database));
    }

    void heSeesNoGoalsNotesOrCheckIns()
    {
        archieComesIn();
        archiePlays();
        QVERIFY(archieShares());
        QVERIFY(m_place->everybodyVisits({m_lorna.get(), m_morven.get()}, skyesBox));
        QVERIFY(archieShares());
        store::Database &his = m_archie->database;
        QVERIFY(!eventsIn(m_lorna->database, Goals).empty());
        QVERIFY(!eventsIn(m_lorna->database, CheckIns).empty());
        QVERIFY(!eventsIn(m_lorna->database, Notes).empty());
        QCOMPARE(eventsIn(his, Goals), std::string());
        QCOMPARE(eventsIn(his, CheckIns), std::string());
        QCOMPARE(eventsIn(his, Notes), std::string());
        // Of plays he has his own, and of the box no history.
        QCOMPARE(eventsIn(his, Home).find("Lorna"), std::string::npos);
        QVERIFY(eventsIn(his, Home).find("Grandad") != std::string::npos);
        QCOMPARE(eventsIn(his, Box).find("used-up"), std::string::npos);
        usecase::Workplace workplace = m_archie->workplace();
        const auto family = usecase::loadFamily(workplace, "Skye");
        QVERIFY(family->child.goals.empty());
        QVERIFY(family->checkIns.empty());
        QCOMPARE(family->plays.size(), std::size_t{1});
        // Not one key of what he may not read is in his store.
        auto query = his.prepare("SELECT count(*) FROM handed_key WHERE lane LIKE 'goals:%' OR "
                                 "lane LIKE 'check-ins:%' OR lane LIKE 'notes:%'");
        QVERIFY(query.ok() && *query->step());
        QCOMPARE(query->number(0), std::int64_t{0});
    }

    void whatHeLogsReachesTheFamilySignedByHim()
    {
        archieComesIn();
        archiePlays();
        QVERIFY(archieShares());
        QVERIFY(m_place->everybodyVisits({m_lorna.get(), m_morven.get()}, skyesBox));
        QCOMPARE(itemOf(*m_lorna, "Skye", "crayons").low, 3);
        QCOMPARE(itemOf(*m_morven, "Skye", "crayons").low, 3);
        QVERIFY(eventsIn(m_lorna->database, Home).find("Grandad") != std::string::npos);
        QCOMPARE(eventsIn(m_morven->database, Home), std::string());
        QVERIFY(rowsAreThoseOfARefold(m_lorna->database));
    }

    void afterSevenDaysTheKeysStopAndWhatHeLoggedStays()
    {
        archieComesIn();
        archiePlays();
        QVERIFY(archieShares());
        QVERIFY(m_place->everybodyVisits({m_lorna.get()}, skyesBox));
        for (StillClock *clock : {&m_lorna->clock, &m_morven->clock, &m_archie->clock})
            clock->moveTo(islandTime(22, 16, 0));
        usecase::Workplace his = m_archie->workplace();
        const auto again = usecase::startPlay(his, {"Skye", {"two-hand-tides"}, {}, {}});
        QVERIFY(!again.ok());
        QCOMPARE(again.error().code, ErrorCode::AccessEnded);
        usecase::Workplace lornas = m_lorna->workplace();
        const auto play = usecase::startPlay(lornas, {"Skye", {"two-hand-tides"}, {}, {}});
        QVERIFY(
            usecase::putBack(lornas, *play, {}, {{crayons, box::ExceptionKind::Broken, 1}}).ok());
        QVERIFY(m_place->everybodyVisits({m_lorna.get(), m_morven.get()}, skyesBox));
        const auto storage = line();
        (void)m_archie->share(*storage);
        // All he hears of is that the keys were turned.
        const auto events = *store::EventRepository(m_archie->database).all();
        for (const journal::Event &event : events)
            QVERIFY(event.when.day < *dayFrom({2027, 1, 22}) ||
                    event.kind == journal::Kind::Epoch || event.kind == journal::Kind::Met);
        QCOMPARE(skyes(m_archie->workplace(), crayons).low, 3);
        QCOMPARE(itemOf(*m_lorna, "Skye", "crayons").low, 2); // his, and hers
        usecase::Workplace workplace = m_lorna->workplace();
        const auto family = usecase::loadFamily(workplace, "Skye");
        const auto outcome =
            std::ranges::find(family->outcomes, "Grandad", &store::OutcomeRow::author);
        QVERIFY(outcome != family->outcomes.end());
        QVERIFY(eventsIn(m_lorna->database, Home).find("Grandad") != std::string::npos);
    }

    /// A code is good once: whoever is second finds nothing, whether early or late.
    void aSecondPhoneWithTheSameCodeGetsNothing()
    {
        const auto storage = line();
        NewPhone early("early", islandTime(15, 16, 3));
        QVERIFY(m_archie->type(readOut(*m_invited), "Grandad").ok());
        QVERIFY(m_archie->look(*storage) == sync::Step::Waiting);
        QVERIFY(early.type(readOut(*m_invited), "Stranger").ok());
        QVERIFY(early.look(*storage) == sync::Step::Taken);
        QVERIFY(lornaAccepts());
        QCOMPARE(m_knock->newcomer.person, std::string("Grandad"));
        QVERIFY(early.look(*storage) == sync::Step::Taken); // the welcome is not for it
        QVERIFY(m_archie->look(*storage) == sync::Step::In);
        QVERIFY(early.look(*storage) == sync::Step::Waiting); // nothing lies there any more
        NewPhone late("late", islandTime(15, 16, 5));
        QVERIFY(late.type(readOut(*m_invited), "Stranger").ok());
        QVERIFY(late.look(*storage) != sync::Step::In);
        QVERIFY(!lornaAccepts()); // no code waits any more
        QVERIFY(lornaShares());
        for (NewPhone *phone : {&early, &late}) {
            QVERIFY(phone->look(*storage) != sync::Step::In);
            QVERIFY(!phone->open()); // nobody's still
            QCOMPARE(*store::EventRepository(phone->database).count(), std::int64_t{0});
        }
        QVERIFY(archieShares()); // and Archie is in
    }

    void afterTenMinutesTheCodeIsOver()
    {
        const auto storage = line();
        QVERIFY(m_archie->type(readOut(*m_invited), "Grandad").ok());
        QVERIFY(m_archie->look(*storage) == sync::Step::Waiting);
        m_lorna->clock.moveTo(islandTime(15, 16, 10));
        QVERIFY(!lornaAccepts());
        m_lorna->clock.moveTo(islandTime(15, 15, 0)); // nor does a clock set back bring it back
        QVERIFY(!lornaAccepts());
        QVERIFY(lornaShares());
        QVERIFY(m_archie->look(*storage) == sync::Step::Waiting);
        QVERIFY(!m_archie->open());
    }

    void untilJustBeforeTenMinutesItIsGood()
    {
        const auto storage = line();
        QVERIFY(m_archie->type(readOut(*m_invited), "Grandad").ok());
        QVERIFY(m_archie->look(*storage) == sync::Step::Waiting);
        m_lorna->clock.moveTo(islandTime(15, 16, 10) - 1);
        QVERIFY(lornaAccepts());
        QVERIFY(m_archie->look(*storage) == sync::Step::In);
    }

    void whatIsTypedAsPeopleTypeIsTheSameCode()
    {
        const auto storage = line();
        std::string typed;
        int number = 0;
        for (const std::string_view word : sync::wordsOf(m_invited->secret))
            typed += std::to_string(++number) + ". " +
                     std::string(word.substr(0, sync::tellingLetters)) + ",  ";
        std::ranges::transform(typed, typed.begin(), [](char c) {
            return static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
        });
        QVERIFY(m_archie->type(typed, "Grandad").ok());
        QVERIFY(m_archie->look(*storage) == sync::Step::Waiting);
        QVERIFY(lornaAccepts());
        QVERIFY(m_archie->look(*storage) == sync::Step::In);
    }
};

QTEST_APPLESS_MAIN(TestScenario11OverWebdav)
#include "tst_scenario_11_over_webdav.moc"
