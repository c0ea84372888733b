#include <QtTest>

#include "core/crew/clinic_crew.h"
#include "core/crew/rights.h"
#include "core/sync/found_crew.h"
#include "core/sync/let_in.h"
#include "core/sync/share.h"
#include "core/sync/turn_keys.h"

#include "tests/support/clinic.h"
#include "tests/support/hostile_crew.h"
#include "tests/support/memory_keeper.h"

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;
using journal::Kind;
using journal::Lane;
using journal::LaneKind;

namespace {

const std::string clinic(crew::clinicCrew);
const Lane table{LaneKind::Clinic, clinic};
const Lane toldIn{LaneKind::Box, clinic};

/// An event that its writer's phone would never write.
void says(CrewPhone &phone, const Lane &lane, Kind kind, const std::string &fields)
{
    auto recording = store::Recording::begin(phone.database, phone.device, phone.clock);
    QVERIFY(recording->say(lane, kind, fields).ok());
    QVERIFY(recording->commit().ok());
}

} // namespace

/// A family that would have the therapist's table: whatever its crew is called, and whatever it
/// says in it, the clinic's lane goes to the clinic's own crew and takes nothing from another
/// (FORMAT.md 10).
class TestHostileClinic : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::unique_ptr<CrewPhone> m_mallory; ///< In Fin's crew, as a therapist: Ruth let him in.
    std::string m_before;                 ///< The table as Morven has it.

    [[nodiscard]] std::string tableOf(CrewPhone &phone) const
    {
        return eventsIn(phone.database, LaneKind::Clinic);
    }
    /// A key of @p lane, opened in Fin's crew for Morven and Mallory.
    HeldEpoch opens(const Lane &lane)
    {
        const auto book = CrewBook::open(m_mallory->post(), finsBox);
        auto opening = freshOpening(*book, {lane, {}}, {m_mallory->device.id, morven().device.id},
                                    m_mallory->entropy);
        says(*m_mallory, finsBoxLane, Kind::Epoch, crew::fieldsOf(*opening));
        const auto events =
            store::EventRepository(m_mallory->database).ofSubject({finsBoxLane, "epochs"});
        for (const journal::Event &event : *events) {
            const auto read = crew::readOpening(event);
            if (read && read->letters == opening->letters)
                opening->id = read->id;
        }
        const auto text = crypto::letterOpened(opening->letters.at(m_mallory->device.id),
                                               crypto::letterSeedOf(m_mallory->secret));
        std::array<std::uint8_t, crypto::EpochKey::size> key{};
        std::copy(text->begin(), text->end(), key.begin());
        return {{finsBox, lane, opening->id, crypto::EpochKey(key)}, {}, opening->holders()};
    }
    [[nodiscard]] CrewPhone &morven() const { return m_crew->morven; }
    /// As Morven is told by somebody who seals what he likes.
    [[nodiscard]] std::string isGiven(const Welcome &welcome)
    {
        const auto read = welcomeIn(letterOf(welcome, m_mallory->entropy), morven().secret);
        Post post = morven().post();
        const Outcome settled =
            read ? settleIn(post, *read) : Outcome(Error{ErrorCode::Unreadable, "letter"});
        return settled.ok() ? "was taken" : settled.error().detail;
    }
    [[nodiscard]] journal::Event foundingBy(CrewPhone &phone) const
    {
        const std::int64_t now = phone.clock.nowMs();
        return {toldIn,    phone.device.id,   1,
                {now, 0},  dayPartAt(now, 0), 0,
                "Mallory", Kind::Member,      crew::fieldsOf(phone.asMember())};
    }

private slots:
    void init()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        (void)tableOn(morven());
        m_mallory = std::make_unique<CrewPhone>("Mallory", store::Role::Therapist, "");
        m_mallory->clock.moveTo(morven().clock.nowMs());
        QVERIFY(m_crew->ruth.letIn(*m_mallory, finsBox).ok());
        for (int time = 0; time < 2; ++time) {
            QVERIFY(m_crew->everybodyVisits(1));
            (void)m_crew->visit(*m_mallory);
        }
        m_before = tableOf(morven());
        QVERIFY(!m_before.empty());
    }

    /// Nothing goes out under a key of the table that a family's crew opened, and nothing comes in.
    void aKeyOfTheTableInAFamilysCrew()
    {
        const HeldEpoch key = opens(table);
        (void)m_crew->visit(*m_mallory);
        Forger forger(*m_mallory, key);

        m_crew->folder.write(forger.nextPlace(),
                             forger.sealed({forger.event(
                                 Kind::Supply, R"({"item":"bands","shelf":{"pieces":99}})")}));
        QVERIFY(m_crew->everybodyVisits(2));
        QCOMPARE(tableOf(morven()), m_before);
        for (const auto &[place, bytes] : m_crew->folder.files())
            QVERIFY(place.folder != folderName(key.epoch, morven().device.id));
        QVERIFY(rowsMatch(morven()));
        QVERIFY(m_crew->goesOn(morven(), m_crew->ruth));
    }

    /// Nor is the clinic's crew founded through the lane in which it is told.
    void theClinicsCrewToldInAFamilys()
    {
        const HeldEpoch key = opens(toldIn);
        (void)m_crew->visit(*m_mallory);
        Forger forger(*m_mallory, key);
        m_crew->folder.write(
            forger.nextPlace(),
            forger.sealed({forger.event(Kind::Member, crew::fieldsOf(m_mallory->asMember()))}));
        QVERIFY(m_crew->everybodyVisits(2));
        QVERIFY(store::CrewRepository(morven().database).crewOf(clinic)->empty());
        QVERIFY(store::EventRepository(morven().database).subjectsOf(toldIn)->empty());
    }

    /// A welcome says who is in its own crew, and nothing of another.
    void aWelcomeThatFoundsAnother()
    {
        const std::string before = stateOf(morven().database);
        const Welcome welcome{"b-x", morven().asMember(), {foundingBy(*m_mallory)}, {}};
        QCOMPARE(isGiven(welcome), std::string("welcome: about more than its crew"));
        QCOMPARE(stateOf(morven().database), before);
    }

    /// A box that is called as the clinic is: her own table never goes there.
    void aCrewThatIsCalledTheClinic()
    {
        const std::string before = stateOf(morven().database);
        const Welcome welcome{clinic, morven().asMember(), {foundingBy(*m_mallory)}, {}};
        QCOMPARE(isGiven(welcome), std::string("code: another clinic's"));
        QVERIFY(morven().found(clinic).ok()); // nor where she has a crew of her own
        QCOMPARE(isGiven(welcome), std::string("code: another clinic's"));
        const auto crew = store::CrewRepository(morven().database).crewOf(clinic);
        QVERIFY(crew->has(morven().device.id) && !crew->has(m_mallory->device.id));
        QVERIFY(before != stateOf(morven().database)); // she has founded it
    }

    /// A home that is called as the clinic is makes nobody's word about the table count or fall.
    void aHomeThatIsCalledTheClinic()
    {
        CrewPhone liar("Liar", store::Role::Parent, clinic);
        crew::Crew fins = crewOf(morven());
        fins.put(liar.asMember());
        fins.put(morven().device.id, {{table, 0}}); // out, and nothing of her table accepted
        QVERIFY(!crew::isAbout(finsBox, fins, table));
        QVERIFY(crew::isAbout(clinic, fins, table));
        QVERIFY(!crew::isAbout(clinic, fins, finsHomeLane));
        QVERIFY(crew::isAbout(finsBox, fins, finsHomeLane));
        const auto events = store::EventRepository(morven().database).all();
        int said = 0;
        for (const journal::Event &event : *events) {
            if (event.lane != table)
                continue;
            ++said;
            QVERIFY(store::countsInAny({{finsBox, fins}}, event));
        }
        QVERIFY(said > 0);
    }
};

QTEST_GUILESS_MAIN(TestHostileClinic)
#include "tst_hostile_clinic.moc"
