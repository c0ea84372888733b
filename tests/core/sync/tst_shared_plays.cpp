#include <QTemporaryDir>
#include <QtTest>

#include "core/journal/lane_home.h"
#include "core/store/projector.h"
#include "core/store/shared_copies.h"
#include "core/sync/crew_book.h"
#include "core/sync/folder_storage.h"
#include "core/usecase/caseload.h"
#include "core/usecase/erase.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/keep_limits.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/share_plays.h"
#include "core/usecase/take_back.h"

#include "tests/support/crew_phone.h"

using namespace lidlark;
using namespace lidlark::test;
using journal::Kind;
using journal::LaneKind;

namespace {

const std::string effiesBox = "b-effie";
const journal::Lane mums = journal::sharedPlaysOf("h-effie-mum");

std::vector<journal::Event> eventsIn(Phone &phone, LaneKind kind)
{
    auto events = *store::EventRepository(phone.database).all();
    std::erase_if(events, [kind](const journal::Event &event) { return event.lane.kind != kind; });
    return events;
}

PlayId plays(Phone &phone, const char *activity, const usecase::NamedException &lost = {{}, {}, 0})
{
    usecase::Workplace workplace = phone.workplace();
    const auto play = usecase::startPlay(workplace, {"Effie", {activity}, {}, {}});
    if (!play)
        return {};
    const std::vector<usecase::NamedException> named(lost.count > 0 ? 1 : 0, lost);
    return usecase::putBack(workplace, *play, {}, named) ? *play : PlayId();
}

std::vector<play::Play> sharedOn(Phone &phone)
{
    return *store::sharedPlays(phone.database, {"c-effie"}, Day{0});
}

bool says(Phone &phone, bool yes)
{
    usecase::Workplace workplace = phone.workplace();
    return usecase::sharePlays(workplace, "Effie", yes).ok();
}

bool holdsKeyOf(CrewPhone &phone, const journal::Lane &lane)
{
    sync::Post post = phone.post();
    const auto book = sync::CrewBook::open(post, effiesBox);
    return book && std::ranges::any_of(book->held(), [&lane](const sync::HeldEpoch &held) {
               return held.epoch.lane == lane;
           });
}

journal::Event word(const std::string &device, std::uint64_t counter, std::string fields)
{
    return {{LaneKind::Home, "h-fin"},
            {device},
            counter,
            {islandTime(11, 9, 0) + static_cast<std::int64_t>(counter), 0},
            {usecase::island::dayOne(), PartOfDay::Morning},
            0,
            device,
            Kind::Sharing,
            std::move(fields)};
}

} // namespace

/// A family may share what it plays (job.md 1.4 Share, D3 and D8; events.md 4, the lane "shared"):
/// real stores and seals, and a folder that is all these phones have in common.
class TestSharedPlays : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_kirsty; ///< Mum's.
    std::unique_ptr<CrewPhone> m_gran;   ///< At mum's too.
    std::unique_ptr<CrewPhone> m_isla;   ///< A guest there.
    std::unique_ptr<CrewPhone> m_aaron;  ///< Dad's.

    void exchange(std::vector<CrewPhone *> phones = {}, int times = 1)
    {
        if (phones.empty()) {
            for (const auto *phone : {&m_kirsty, &m_gran, &m_isla, &m_aaron, &m_morven}) {
                if (*phone)
                    phones.push_back(phone->get());
            }
            times = 2;
        }
        sync::FolderStorage storage(m_folder->path().toStdString());
        for (int time = 0; time < times; ++time) {
            for (CrewPhone *phone : phones) {
                const auto report = phone->exchange(effiesBox, storage);
                QVERIFY(report.received >= 0 && report.findings.empty() && !report.trouble);
            }
        }
    }

    void othersComeIn()
    {
        m_aaron = std::make_unique<CrewPhone>("Aaron", store::Role::Parent, "h-effie-dad");
        m_isla = std::make_unique<CrewPhone>("Isla", store::Role::Guest, "h-effie-mum");
        QVERIFY(m_morven->letIn(*m_aaron, effiesBox).ok());
        QVERIFY(m_kirsty->letIn(*m_isla, effiesBox, usecase::island::dayOne() + 5).ok());
        exchange();
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_morven = std::make_unique<CrewPhone>("Morven", store::Role::Therapist, "");
        m_morven->clock.moveTo(islandTime(4, 10, 0));
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::issueBox(workplace, familyOf("Effie")).ok());
        m_kirsty = std::make_unique<CrewPhone>("Kirsty", store::Role::Parent, "h-effie-mum");
        m_gran = std::make_unique<CrewPhone>("Gran", store::Role::Caregiver, "h-effie-mum");
        m_isla.reset();
        m_aaron.reset();
        QVERIFY(m_morven->found(effiesBox).ok());
        QVERIFY(m_morven->letIn(*m_kirsty, effiesBox).ok());
        exchange({m_morven.get(), m_kirsty.get()});
        QVERIFY(m_kirsty->letIn(*m_gran, effiesBox).ok());
        exchange();
    }

    /// job.md D3: off at the start. Not even a key is made.
    void nothingIsSharedUntilAParentSaysYes()
    {
        QVERIFY(!plays(*m_kirsty, "slow-oars").empty());
        exchange();
        for (CrewPhone *phone : {m_morven.get(), m_kirsty.get()}) {
            QVERIFY(eventsIn(*phone, LaneKind::Shared).empty());
            QVERIFY(!holdsKeyOf(*phone, mums));
        }
        usecase::Workplace workplace = m_kirsty->workplace();
        const auto choice = usecase::playSharing(workplace, "Effie");
        QVERIFY(choice && *choice);
        QVERIFY((*choice)->with == std::vector<std::string>{"Morven"});
        QVERIFY(!(*choice)->shares && !(*choice)->day);
    }

    void onlyAParentIsAskedAndOnlyWhereThereIsATherapist()
    {
        othersComeIn();
        for (CrewPhone *phone : {m_gran.get(), m_isla.get(), m_morven.get()}) {
            usecase::Workplace workplace = phone->workplace();
            QVERIFY(!usecase::playSharing(workplace, "Effie")->has_value());
            QVERIFY(!says(*phone, true));
        }
        auto maker = therapistWith({"Effie"}); // a family that is in no crew
        Phone alone("Ruth", store::Role::Parent, "h-effie-mum");
        QVERIFY(alone.meet(*maker) > 0);
        QVERIFY(!says(alone, true));
    }

    /// events.md 4: read by the therapist and that home. job.md D8: not by the other home.
    void whatIsSharedReachesTheTherapistAndNobodyElse()
    {
        QVERIFY(says(*m_kirsty, true));
        const PlayId play = plays(*m_kirsty, "slow-oars");
        usecase::Workplace workplace = m_kirsty->workplace();
        QVERIFY(usecase::noticePhrase(workplace, play, play::Phrase::AskedAgain).ok());
        exchange();
        othersComeIn();
        (void)plays(*m_kirsty, "slow-oars"); // sealed with them in
        exchange();
        for (CrewPhone *phone : {m_morven.get(), m_kirsty.get(), m_gran.get()}) {
            const auto shared = sharedOn(*phone);
            QCOMPARE(shared.size(), std::size_t{2});
            QCOMPARE(shared.front().activity.value, std::string("slow-oars"));
            QVERIFY(shared.front().phrases.size() + shared.back().phrases.size() == 1);
            QVERIFY(holdsKeyOf(*phone, mums));
            QVERIFY(*store::Projector(phone->database).matchesRefold());
        }
        for (CrewPhone *phone : {m_aaron.get(), m_isla.get()}) {
            QVERIFY(eventsIn(*phone, LaneKind::Shared).empty());
            QVERIFY(!holdsKeyOf(*phone, mums));
        }
    }

    /// events.md 4: copies say day and part of day only; and nothing ties one to what came of the
    /// pieces, which the box's lane tells with the play's id and time.
    void aCopyCannotBeTiedToWhatCameOfThePieces()
    {
        QVERIFY(says(*m_kirsty, true));
        const PlayId play =
            plays(*m_kirsty, "mend-the-net", {{"pegs"}, box::ExceptionKind::Lost, 1});
        QVERIFY(!play.empty());
        exchange();
        const auto outcomes = eventsIn(*m_morven, LaneKind::Box);
        QVERIFY(std::ranges::any_of(outcomes, [&play](const journal::Event &event) {
            return event.kind == Kind::Outcome &&
                   event.fields.find(play.value) != event.fields.npos;
        }));
        const auto copies = eventsIn(*m_morven, LaneKind::Shared);
        QCOMPARE(copies.size(), std::size_t{1}); // not even how it ended
        for (const journal::Event &copy : copies) {
            QCOMPARE(copy.instant.ms, firstMomentMs(copy.when, copy.offsetMinutes));
            QVERIFY(copy.fields.find(play.value) == copy.fields.npos);
            QVERIFY(copy.fields.find(hexOf(blake2b(play.value)).substr(0, 32)) == copy.fields.npos);
            QCOMPARE(copy.author, std::string());
        }
    }

    /// job.md 1.4: nothing about not playing is recorded or sent.
    void whatWasNotPlayedToItsEndIsNotCopied()
    {
        QVERIFY(!plays(*m_kirsty, "slow-oars").empty()); // before anybody said yes
        m_kirsty->clock.moveTo(islandTime(12, 17, 0));
        QVERIFY(says(*m_kirsty, true));
        usecase::Workplace workplace = m_kirsty->workplace();
        const auto stopped = usecase::startPlay(workplace, {"Effie", {"slow-oars"}, {}, {}});
        QVERIFY(usecase::stopPlay(workplace, *stopped, {}, {}).ok());
        QVERIFY(usecase::startPlay(workplace, {"Effie", {"crumb-counter"}, {}, {}}).ok());
        exchange();
        QVERIFY(eventsIn(*m_morven, LaneKind::Shared).empty());
    }

    void copiesOfTwoPhonesAreOneFact()
    {
        QVERIFY(says(*m_kirsty, true));
        exchange();
        (void)plays(*m_kirsty, "slow-oars");
        usecase::Workplace grans = m_gran->workplace(); // hears of the play, and not of the copy
        QVERIFY(usecase::takeEventsFrom(m_kirsty->database, grans, [](const journal::Lane &lane) {
                    return lane.kind == LaneKind::Home;
                }).ok());
        QVERIFY(usecase::keepLimits(grans).ok()); // nothing is old: no copy is made for it
        QVERIFY(!plays(*m_gran, "crumb-counter").empty());
        QCOMPARE(eventsIn(*m_gran, LaneKind::Shared).size(), std::size_t{2});
        exchange();
        QCOMPARE(eventsIn(*m_morven, LaneKind::Shared).size(), std::size_t{3});
        for (CrewPhone *phone : {m_morven.get(), m_kirsty.get(), m_gran.get()}) {
            QCOMPARE(sharedOn(*phone).size(), std::size_t{2});
            QVERIFY(*store::Projector(phone->database).matchesRefold());
        }
    }

    /// A guest cannot write there: whoever of the home hears of the play copies it.
    void aGuestsPlayIsCopiedByTheHome()
    {
        othersComeIn();
        QVERIFY(says(*m_kirsty, true));
        exchange();
        QVERIFY(!plays(*m_isla, "slow-oars").empty());
        QVERIFY(eventsIn(*m_isla, LaneKind::Shared).empty());
        exchange();
        QCOMPARE(sharedOn(*m_morven).size(), std::size_t{1});
    }

    void whatIsTakenBackIsTakenBackThereToo()
    {
        QVERIFY(says(*m_kirsty, true));
        const PlayId play = plays(*m_kirsty, "slow-oars");
        usecase::Workplace workplace = m_kirsty->workplace();
        QVERIFY(usecase::noticePhrase(workplace, play, play::Phrase::NeededHelp).ok());
        exchange();
        const auto noticed = usecase::lastNotedBy(workplace, "Effie", {});
        QVERIFY(usecase::takeBack(workplace, {"Effie", {}, *noticed}).ok());
        exchange();
        QCOMPARE(sharedOn(*m_morven).size(), std::size_t{1});
        QVERIFY(sharedOn(*m_morven).front().phrases.empty());
        QVERIFY(usecase::putInAgain(workplace, {"Effie", {}, *noticed}).ok());
        exchange();
        QCOMPARE(sharedOn(*m_morven).front().phrases.size(), std::size_t{1});
        QVERIFY(
            usecase::erase(workplace, usecase::Erasable::Plays, usecase::island::dayOne()).ok());
        exchange();
        QVERIFY(sharedOn(*m_morven).empty() && eventsIn(*m_morven, LaneKind::Shared).size() > 0);
        QVERIFY((*usecase::playSharing(workplace, "Effie"))->shares); // the yes is another word
    }

    /// job.md D4: withdrawal works offline and stops sending at once; and what a phone that had not
    /// heard of it copied meanwhile never leaves.
    void aNoTakesAllOfItBack()
    {
        QVERIFY(says(*m_kirsty, true));
        (void)plays(*m_kirsty, "slow-oars");
        exchange();
        QVERIFY(says(*m_kirsty, false));
        QVERIFY(sharedOn(*m_kirsty).empty());
        (void)plays(*m_kirsty, "slow-oars");
        QVERIFY(!plays(*m_gran, "crumb-counter").empty()); // has not heard
        QVERIFY(!sharedOn(*m_gran).empty());
        exchange({m_kirsty.get(), m_gran.get()});
        exchange({m_morven.get()});
        QVERIFY(sharedOn(*m_morven).empty());
        for (const journal::Event &event : eventsIn(*m_morven, LaneKind::Shared))
            QCOMPARE(event.kind, Kind::Erased);
        exchange();
        m_kirsty->clock.moveTo(islandTime(12, 18, 0));
        QVERIFY(says(*m_kirsty, true)); // again, from now on
        (void)plays(*m_kirsty, "slow-oars");
        exchange();
        QCOMPARE(sharedOn(*m_morven).size(), std::size_t{1});
        for (CrewPhone *phone : {m_morven.get(), m_kirsty.get(), m_gran.get()})
            QVERIFY(*store::Projector(phone->database).matchesRefold());
    }

    /// As events.md 8.3: what loosens holds only while nobody has withdrawn it, even concurrently.
    void ofAYesAndANoThatDoNotKnowOfEachOtherTheNoHolds()
    {
        const std::string yes = play::fieldsOfSharing({"c-fin"}, play::CopyKey());
        const auto no = word("ruth", 1, play::fieldsOfNotSharing({"c-fin"}));
        const auto later = word("callum", 9, yes);
        const auto after = word("ruth", 2, yes);
        const journal::Seen nobodyMet(std::vector<journal::Event>{});
        const auto fold = [&](std::vector<journal::Event> events) {
            const auto said = play::foldSharing(events, nobodyMet);
            std::ranges::reverse(events);
            const auto reversed = play::foldSharing(events, nobodyMet);
            return said && reversed && said->yes && reversed->yes;
        };
        QVERIFY(!fold({no, later}) && !fold({no}));
        QVERIFY(fold({later}) && fold({no, after}));
        QVERIFY(!fold({word("ruth", 1, "{\"child\":\"c-fin\",\"yes\":true}")})); // no key
        QVERIFY(!play::foldSharing({}, nobodyMet));
    }

    /// job.md D7: twelve months, as what they were made from.
    void copiesGoAfterTwelveMonths()
    {
        QVERIFY(says(*m_kirsty, true));
        (void)plays(*m_kirsty, "slow-oars");
        exchange();
        for (CrewPhone *phone : {m_kirsty.get(), m_morven.get()}) {
            phone->clock.moveTo(islandTime(11 + usecase::playDays + 1, 9, 0));
            usecase::Workplace workplace = phone->workplace();
            (void)usecase::sayPlace(workplace, "Effie", "h-effie-mum", "at Mum's");
        }
        exchange({m_kirsty.get(), m_morven.get()}, 2);
        usecase::Workplace workplace = m_morven->workplace();
        QCOMPARE(sharedOn(*m_morven).size(), std::size_t{1});
        QVERIFY(usecase::keepLimits(workplace).ok());
        QVERIFY(sharedOn(*m_morven).empty());
    }

    /// job.md T16: no "last played", for families that share as little as for others.
    void sharingLeavesNoTraceOnTheBoard()
    {
        usecase::Workplace workplace = m_morven->workplace();
        const auto shown = [&workplace] {
            const auto board = usecase::caseload(workplace);
            const usecase::BoxHealth &health = board->front();
            return std::tuple(health.asked, health.low, health.onTheFloor, health.reviewOn,
                              health.isWell());
        };
        const auto before = shown();
        QVERIFY(says(*m_kirsty, true));
        for (int evening = 0; evening < 3; ++evening)
            (void)plays(*m_kirsty, "slow-oars");
        exchange();
        QCOMPARE(sharedOn(*m_morven).size(), std::size_t{3});
        QVERIFY(shown() == before);
        QVERIFY(usecase::loadFamily(workplace, "Effie")->plays.empty());
    }
};

QTEST_APPLESS_MAIN(TestSharedPlays)
#include "tst_shared_plays.moc"
