#include <QtTest>

#include "core/store/crew_repository.h"
#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/sync/leave.h"
#include "core/usecase/erase.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "shaky_storage.h"

#include "tests/support/crew_phone.h"
#include "tests/support/own_samples.h"

using namespace lidlark;
using namespace lidlark::test;
using samples::ShakyStorage;

namespace {

const std::string finsBox = "b-fin";

std::string eventsIn(CrewPhone &phone, journal::LaneKind kind)
{
    std::vector<std::string> lines;
    const auto events = store::EventRepository(phone.database).all();
    if (!events)
        return "unreadable";
    for (const journal::Event &event : *events) {
        if (event.lane.kind == kind)
            lines.push_back(journal::canonicalText(event));
    }
    std::sort(lines.begin(), lines.end());
    std::string text;
    for (const std::string &line : lines)
        text += line + "\n";
    return text;
}

bool matchesRefold(CrewPhone &phone)
{
    const auto matches = store::Projector(phone.database).matchesRefold();
    return matches && *matches;
}

} // namespace

/// Guards that phones that only share a storage come to hold the same, each what its role may read
/// and nothing else (design.md 9, events.md 4 and 10).
class TestExchange : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<CrewPhone> m_morven;
    std::unique_ptr<CrewPhone> m_ruth;
    std::unique_ptr<CrewPhone> m_gran;
    std::unique_ptr<ShakyStorage> m_storage;

    void everybodyExchanges(int times = 3)
    {
        for (int time = 0; time < times; ++time) {
            for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()})
                QCOMPARE(phone->exchange(finsBox, *m_storage).received >= 0, true);
        }
    }

private slots:
    void init()
    {
        m_storage = std::make_unique<ShakyStorage>(1, 0);
        m_morven = std::make_unique<CrewPhone>("Morven", store::Role::Therapist, "");
        m_morven->clock.moveTo(islandTime(4, 10, 0));
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::issueBox(workplace, familyOf("Fin")).ok());
        m_ruth = std::make_unique<CrewPhone>("Ruth", store::Role::Parent, "h-fin");
        m_gran = std::make_unique<CrewPhone>("Gran", store::Role::Caregiver, "h-fin");
        QVERIFY(m_morven->found(finsBox).ok());
        QVERIFY(m_morven->letIn(*m_ruth, finsBox).ok());
        (void)m_morven->exchange(finsBox, *m_storage);
        const auto first = m_ruth->exchange(finsBox, *m_storage);
        QVERIFY(first.received > 0);
        QVERIFY(first.findings.empty());
        QVERIFY(m_ruth->letIn(*m_gran, finsBox).ok());
        everybodyExchanges();
    }

    void everybodyHoldsWhatTheRoleMayRead()
    {
        using enum journal::LaneKind;
        QVERIFY(!eventsIn(*m_morven, Box).empty());
        QCOMPARE(eventsIn(*m_ruth, Box), eventsIn(*m_morven, Box));
        QCOMPARE(eventsIn(*m_gran, Box), eventsIn(*m_morven, Box));
        QCOMPARE(eventsIn(*m_gran, Safety), eventsIn(*m_morven, Safety));
        QVERIFY(!eventsIn(*m_ruth, Goals).empty());
        QCOMPARE(eventsIn(*m_ruth, Goals), eventsIn(*m_morven, Goals));
        QCOMPARE(eventsIn(*m_gran, Goals), std::string());
    }

    void theHomesOwnStaysInTheHome()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        const auto play = usecase::startPlay(workplace, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(play.ok());
        QVERIFY(usecase::putBack(workplace, *play, {}, {}).ok());
        everybodyExchanges();
        using enum journal::LaneKind;
        QVERIFY(eventsIn(*m_gran, Home).find("dough-forecast") != std::string::npos);
        QCOMPARE(eventsIn(*m_morven, Home), std::string());
        QCOMPARE(eventsIn(*m_morven, Box).find("dough-forecast"), std::string::npos);
    }

    /// Each has written under the newest key by now, so nobody looks for more under the one before.
    void whatIsWrittenAfterANewcomerCameReachesEverybody()
    {
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()}) {
            usecase::Workplace workplace = phone->workplace();
            QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"pegs"}, 6}}).ok());
            everybodyExchanges();
        }
        usecase::Workplace workplace = m_gran->workplace();
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"pegs"}, 4}}).ok());
        everybodyExchanges();
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()})
            QCOMPARE(itemOf(*phone, "Fin", "pegs").high, 4);
        QCOMPARE(eventsIn(*m_gran, journal::LaneKind::Box),
                 eventsIn(*m_ruth, journal::LaneKind::Box));
    }

    void rowsAreThoseOfARefold()
    {
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get()})
            QVERIFY(matchesRefold(*phone));
    }

    /// Nothing new: one request for each other device and epoch, nothing written.
    void nothingNewIsCheap()
    {
        everybodyExchanges();
        const std::size_t files = m_storage->files.size();
        m_storage->calls = 0;
        const auto report = m_ruth->exchange(finsBox, *m_storage);
        QCOMPARE(report.received, 0);
        QCOMPARE(report.shared, 0);
        QCOMPARE(m_storage->files.size(), files);
        qInfo("%d requests where nothing is new", m_storage->calls);
    }

    /// A new file costs the one request that brings it: not every device is asked once more.
    void newsIsLookedForOnce()
    {
        const auto granCounts = [this](int pegs) {
            usecase::Workplace workplace = m_gran->workplace();
            QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"pegs"}, pegs}}).ok());
        };
        const auto callsOfRuth = [this] {
            m_storage->calls = 0;
            sync::Post ruths = m_ruth->post();
            const auto taken = sync::takeIn(ruths, finsBox, *m_storage);
            return taken && taken->findings.empty() ? m_storage->calls : -1;
        };
        granCounts(6); // under the newest key: asked for under that alone from now on
        everybodyExchanges();
        everybodyExchanges();
        const int quiet = callsOfRuth();
        QVERIFY(quiet > 0);
        const auto files = static_cast<int>(m_storage->files.size());
        granCounts(4);
        (void)m_gran->exchange(finsBox, *m_storage);
        const int brought = static_cast<int>(m_storage->files.size()) - files;
        QVERIFY(brought > 0);
        QCOMPARE(callsOfRuth(), quiet + brought);
        QCOMPARE(itemOf(*m_ruth, "Fin", "pegs").high, 4);
    }

    void theStorageReadsNothing()
    {
        for (const auto &[place, bytes] : m_storage->files) {
            for (const char *word : {"Fin", "Ruth", "eyes", "box", "d-Ruth"})
                QCOMPARE(bytes.find(word), std::string::npos);
        }
    }

    void whoIsRemovedReadsNothingNew()
    {
        sync::Post ruths = m_ruth->post();
        QVERIFY(sync::removeMember(ruths, finsBox, m_gran->device.id).ok());
        (void)m_ruth->exchange(finsBox, *m_storage);
        (void)m_morven->exchange(finsBox, *m_storage);
        usecase::Workplace workplace = m_ruth->workplace();
        const auto play = usecase::startPlay(workplace, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(usecase::putBack(workplace, *play, {}, {{{"eyes"}, box::ExceptionKind::UsedUp, 1}})
                    .ok());
        (void)m_ruth->exchange(finsBox, *m_storage);
        (void)m_morven->exchange(finsBox, *m_storage);
        QCOMPARE(itemOf(*m_morven, "Fin", "eyes").low, 5);
        QVERIFY(m_gran->exchange(finsBox, *m_storage).out);
        QCOMPARE(itemOf(*m_gran, "Fin", "eyes").low, 6);
        QCOMPARE(eventsIn(*m_gran, journal::LaneKind::Home).find("dough-forecast"),
                 std::string::npos);
    }

    /// What Gran's lost tablet writes from now on is nobody's any more.
    void whoIsRemovedWritesNothingNew()
    {
        sync::Post ruths = m_ruth->post();
        QVERIFY(sync::removeMember(ruths, finsBox, m_gran->device.id).ok());
        usecase::Workplace workplace = m_gran->workplace(); // it knows nothing of it yet
        const auto play = usecase::startPlay(workplace, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(usecase::putBack(workplace, *play, {}, {{{"eyes"}, box::ExceptionKind::UsedUp, 1}})
                    .ok());
        (void)m_gran->exchange(finsBox, *m_storage);
        const auto report = m_ruth->exchange(finsBox, *m_storage);
        QVERIFY(!report.findings.empty());
        QCOMPARE(report.findings.front().kind, sync::FindingKind::Intruder);
        QCOMPARE(report.findings.front().device, m_gran->device.id);
        QCOMPARE(itemOf(*m_ruth, "Fin", "eyes").low, 6);
        // It is told once: nobody can take it away, and nobody has to.
        QVERIFY(m_ruth->exchange(finsBox, *m_storage).findings.empty());
    }

    /// Erased in the morning, gone in the afternoon: not only on the day on which folders are
    /// listed.
    void whatIsErasedGoesWithTheNextExchange()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        const auto play = usecase::startPlay(workplace, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(usecase::putBack(workplace, *play, {}, {}).ok());
        everybodyExchanges();
        const auto files = m_storage->files;
        QVERIFY(eventsIn(*m_gran, journal::LaneKind::Home).find("dough-forecast") !=
                std::string::npos);
        QVERIFY(
            usecase::erase(workplace, usecase::Erasable::Plays, store::todayOf(m_ruth->clock)->day)
                .ok());
        (void)m_ruth->exchange(finsBox, *m_storage);
        const auto report = m_gran->exchange(finsBox, *m_storage);
        QVERIFY(report.findings.empty());
        QCOMPARE(eventsIn(*m_gran, journal::LaneKind::Home).find("dough-forecast"),
                 std::string::npos);
        QVERIFY(matchesRefold(*m_gran));
        const auto gone = std::ranges::count_if(
            files, [this](const auto &file) { return !m_storage->files.contains(file.first); });
        QVERIFY(gone > 0); // from the storage too
    }

    /// What it had written comes along; after that nothing of it does.
    void whoLeavesTellsTheOthers()
    {
        usecase::Workplace workplace = m_gran->workplace();
        QVERIFY(usecase::sayPlace(workplace, "Fin", "h-fin", "at Gran's").ok());
        sync::Post gran = m_gran->post();
        QVERIFY(sync::leave(gran, finsBox).ok());
        QVERIFY(m_gran->exchange(finsBox, *m_storage).out);
        everybodyExchanges();
        for (CrewPhone *phone : {m_ruth.get(), m_morven.get()}) {
            const auto crew = store::CrewRepository(phone->database).crewOf(finsBox);
            QVERIFY(crew && crew->removed(m_gran->device.id));
            QVERIFY(eventsIn(*phone, journal::LaneKind::Box).find("at Gran's") !=
                    std::string::npos);
        }
        usecase::Workplace ruths = m_ruth->workplace();
        QVERIFY(usecase::sayPlace(ruths, "Fin", "h-fin", "in the hall").ok());
        everybodyExchanges();
        QCOMPARE(eventsIn(*m_gran, journal::LaneKind::Box).find("in the hall"), std::string::npos);
        QVERIFY(eventsIn(*m_morven, journal::LaneKind::Box).find("in the hall") !=
                std::string::npos);
    }

    void aGuestSeesTheBoxAndNoHistory()
    {
        usecase::Workplace desk = m_morven->workplace();
        QVERIFY(writeOwn(desk));
        for (int time = 0; time < 2; ++time) // what stands is handed on, and nothing before it
            QVERIFY(usecase::sendToBox(desk, "Fin", workbench::OwnSort::Item, "own-bobbins").ok());
        everybodyExchanges();
        usecase::Workplace workplace = m_ruth->workplace();
        const auto play = usecase::startPlay(workplace, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(usecase::putBack(workplace, *play, {}, {{{"eyes"}, box::ExceptionKind::UsedUp, 2}})
                    .ok());
        CrewPhone archie("Archie", store::Role::Guest, "h-fin");
        archie.clock.moveTo(m_ruth->clock.nowMs());
        const Day today = store::todayOf(m_ruth->clock)->day;
        QVERIFY(m_ruth->letIn(archie, finsBox, today + 6).ok());
        (void)m_ruth->exchange(finsBox, *m_storage);
        const auto report = archie.exchange(finsBox, *m_storage);
        for (const auto &f : report.findings)
            qInfo("  finding %d %s %s %d", (int)f.kind, f.device.value.c_str(),
                  toText(f.lane).c_str(), (int)f.sequence);
        QVERIFY(report.findings.empty());
        QVERIFY(OwnWorkplace(archie).files() == OwnWorkplace(*m_ruth).files());
        QCOMPARE(OwnWorkplace(archie).files().items.size(), std::size_t{1});
        using enum journal::LaneKind;
        QCOMPARE(itemOf(archie, "Fin", "eyes").low, 4);
        QCOMPARE(itemOf(archie, "Fin", "eyes").high, 4);
        QCOMPARE(itemOf(archie, "Fin", "pegs").low, itemOf(*m_ruth, "Fin", "pegs").low);
        QCOMPARE(eventsIn(archie, Safety).empty(), false);
        QCOMPARE(eventsIn(archie, Home), std::string());
        QCOMPARE(eventsIn(archie, CheckIns), std::string());
        QCOMPARE(eventsIn(archie, Goals), std::string());
        QCOMPARE(eventsIn(archie, Box).find("used-up"), std::string::npos);
        QVERIFY(matchesRefold(archie));

        // He plays; it reaches the home, signed by him, and he reads nothing of theirs.
        usecase::Workplace his = archie.workplace();
        const auto guestPlay = usecase::startPlay(his, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(guestPlay.ok());
        QVERIFY(
            usecase::putBack(his, *guestPlay, {}, {{{"crayons"}, box::ExceptionKind::Broken, 1}})
                .ok());
        (void)archie.exchange(finsBox, *m_storage);
        everybodyExchanges();
        (void)archie.exchange(finsBox, *m_storage);
        QCOMPARE(itemOf(*m_gran, "Fin", "crayons").low, itemOf(archie, "Fin", "crayons").low);
        QVERIFY(eventsIn(*m_gran, Home).find("Archie") != std::string::npos);
        QCOMPARE(eventsIn(archie, Home).find("Ruth"), std::string::npos);
        QCOMPARE(eventsIn(*m_morven, Home), std::string());
        for (CrewPhone *phone : {m_ruth.get(), m_gran.get(), &archie})
            QVERIFY(matchesRefold(*phone));

        // After his week nothing new is for him, and what he logged stays.
        for (CrewPhone *phone : {m_morven.get(), m_ruth.get(), m_gran.get(), &archie})
            phone->clock.moveTo(phone->clock.nowMs() + 8 * msPerDay);
        usecase::Workplace later = m_ruth->workplace();
        const auto after = usecase::startPlay(later, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(
            usecase::putBack(later, *after, {}, {{{"pegs"}, box::ExceptionKind::Broken, 1}}).ok());
        everybodyExchanges();
        const int pegs = itemOf(archie, "Fin", "pegs").low;
        (void)archie.exchange(finsBox, *m_storage);
        QCOMPARE(itemOf(archie, "Fin", "pegs").low, pegs);
        QCOMPARE(itemOf(*m_morven, "Fin", "pegs").low, pegs - 1);
        QVERIFY(eventsIn(*m_gran, Home).find("Archie") != std::string::npos);
    }
};

QTEST_APPLESS_MAIN(TestExchange)
#include "tst_exchange.moc"
