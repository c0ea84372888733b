#include <QtTest>

#include "core/crew/clinic_crew.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/sync/come_anew.h"
#include "core/sync/found_crew.h"
#include "core/sync/home_asked_into.h"
#include "core/sync/let_in.h"
#include "core/sync/segment.h"
#include "core/usecase/issue_box.h"

#include "tests/support/clinic.h"
#include "tests/support/hostile_folder.h"
#include "tests/support/new_phone.h"

using namespace lidlark;
using namespace lidlark::test;
using crew::Role;
using journal::LaneKind;
using workbench::NotReady;

namespace {

const std::string clinic(crew::clinicCrew);
const std::string finsBox = "b-fin";

/// A phone that is somebody's from the start.
std::unique_ptr<NewPhone> phoneOf(const std::string &person, Role role, const std::string &home)
{
    auto phone = std::make_unique<NewPhone>(person, islandTime(4, 10, 0));
    (void)store::DeviceRepository(phone->database)
        .setDevice({{"d-" + person}, person, role, {home}, {}});
    return phone;
}

/// Holds latex where no box of a child who must avoid it may (activities.md 1.3): loops instead.
workbench::KeptBox latexFree(const std::string &code, const workbench::DesignId &design)
{
    workbench::KeptBox box = standardBox(code, "Anya", design);
    box.box.parts[0] = {{"loops"}, 6, {"bands"}};
    box.personal.avoids = {child::Avoided::Latex};
    return box;
}

std::string codeOf(const Outcome &outcome)
{
    return outcome.ok() ? std::string("was taken") : outcome.error().detail;
}

} // namespace

/// Guards that a therapist and who packs with her share one table over a storage that learns
/// nothing, and that no family's phone does (events.md 4, "clinic"; job.md 1.1 and T4).
class TestClinicCrew : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileFolder> m_folder;
    std::unique_ptr<NewPhone> m_morven;
    std::unique_ptr<NewPhone> m_ruth;
    std::unique_ptr<NewPhone> m_callum;
    Table m_table;

    /// By nine words, read out in the room. @returns how far the newcomer came.
    std::optional<sync::Step> comesIn(NewPhone &host, const std::string &box,
                                      const sync::Asked &asked, NewPhone &newcomer,
                                      const std::string &person)
    {
        sync::Post post = host.open()->post;
        const auto invited = sync::foundCrew(post, box)
                                 ? sync::invite(post, box, asked)
                                 : Result<sync::Invited>(Error{ErrorCode::NotAllowed, {}});
        if (!invited)
            return std::nullopt;
        std::string words;
        for (const std::string_view word : sync::wordsOf(invited->secret))
            words.append(words.empty() ? "" : " ").append(word);
        if (!newcomer.type(words, person) || newcomer.look(storage()) != sync::Step::Waiting)
            return std::nullopt;
        const auto heard = sync::lookForKnock(*invited, storage());
        const auto *knock = std::get_if<std::optional<sync::Knock>>(&heard);
        if (knock == nullptr || !*knock || !sync::accept(post, box, *invited, **knock).ok() ||
            !host.share(storage()))
            return std::nullopt;
        return newcomer.look(storage());
    }
    std::optional<sync::Step> callumComesIn()
    {
        return comesIn(*m_morven, clinic, {Role::Therapist, {}, {}}, *m_callum, "Callum");
    }
    [[nodiscard]] sync::Storage &storage() const { return m_folder->storage(); }
    /// @returns whether nobody met anything that should not be.
    bool everybodyShares(int times = 2)
    {
        bool well = true;
        for (int time = 0; time < times; ++time) {
            for (NewPhone *phone : {m_morven.get(), m_callum.get(), m_ruth.get()}) {
                const auto shared = phone->share(storage());
                well = well && shared;
                for (const auto &[box, report] : shared ? shared->boxes : sync::Shared().boxes)
                    well = well && report.findings.empty() && !report.trouble && !report.out &&
                           !report.copied && report.waiting == 0;
            }
        }
        return well;
    }
    static sync::CrewBook bookOf(NewPhone &phone, const std::string &box)
    {
        return *sync::CrewBook::open(phone.open()->post, box);
    }
    [[nodiscard]] Outcome handsOver(NewPhone &phone, const std::string &code) const
    {
        usecase::Workplace workplace = phone.workplace();
        return usecase::issuePackedBox(workplace, m_table.build, code);
    }
    void sameTableForBoth()
    {
        for (const char *code : {"K1", "K2", "K3", "K4", "K5"})
            QVERIFY2(boxOn(*m_morven, m_table, code) == boxOn(*m_callum, m_table, code), code);
        QVERIFY(rowsMatch(*m_morven));
        QVERIFY(rowsMatch(*m_callum));
    }

private slots:
    /// Fin's box is out and Ruth is in its crew; five more are on the table, one of them special.
    void init()
    {
        m_folder = std::make_unique<HostileFolder>();
        m_morven = phoneOf("Morven", Role::Therapist, "");
        usecase::Workplace hers = m_morven->workplace();
        QVERIFY(usecase::issueBox(hers, familyOf("Fin")).ok());
        m_table = tableOn(*m_morven);
        for (const auto &[code, whose] :
             {std::pair("K1", "Fin"), {"K2", "Isla"}, {"K3", "Rory"}, {"K4", "Zoya"}})
            QVERIFY(usecase::keepBox(hers, m_table.build, standardBox(code, whose, m_table.design))
                        .ok());
        QVERIFY(usecase::keepBox(hers, m_table.build, latexFree("K5", m_table.design)).ok());
        m_ruth = std::make_unique<NewPhone>("Ruth", islandTime(4, 10, 0));
        QVERIFY(comesIn(*m_morven, finsBox, {Role::Parent, {"h-fin"}, {}}, *m_ruth, "Ruth") ==
                sync::Step::In);
        m_callum = std::make_unique<NewPhone>("Callum", islandTime(4, 10, 0));
        QVERIFY(callumComesIn() == sync::Step::In);
        QVERIFY(everybodyShares());
    }

    /// Three on his phone, two on hers, both without a network; then they meet.
    void twoPackersSplitABuild()
    {
        for (const char *code : {"K1", "K2", "K5"})
            QVERIFY(packAll(*m_callum, m_table, code));
        for (const char *code : {"K3", "K4"})
            QVERIFY(packAll(*m_morven, m_table, code));
        QVERIFY(!boxOn(*m_morven, m_table, "K1").isReady());
        QVERIFY(everybodyShares());
        sameTableForBoth();
        for (const char *code : {"K1", "K2", "K3", "K4"})
            QVERIFY(boxOn(*m_callum, m_table, code).isReady());
        QVERIFY(boxOn(*m_morven, m_table, "K5").notReady == NotReady::SecondLook);
        QVERIFY(!lookOverAll(*m_callum, m_table, "K5"));
        QVERIFY(lookOverAll(*m_morven, m_table, "K5"));
        QVERIFY(everybodyShares());
        sameTableForBoth();
        QVERIFY(boxOn(*m_callum, m_table, "K5").isReady());
        QCOMPARE(boxOn(*m_callum, m_table, "K5").lines[0].packed.front().who,
                 std::string("Callum"));
        QCOMPARE(boxOn(*m_callum, m_table, "K5").lines[0].lookedBy, std::string("Morven"));
    }

    /// The keys of a home go to whom it is asked into: another child's family is never let into the
    /// one home that the therapist's phone happens to know.
    void theSecondFamilyHasAHomeOfItsOwn()
    {
        QVERIFY(packAll(*m_morven, m_table, "K2"));
        QVERIFY(handsOver(*m_morven, "K2").ok());
        const auto isla = store::BoxRepository(m_morven->database).boxOf("Isla");
        QVERIFY(isla.ok());
        QVERIFY(isla->id.value != "b-isla"); // drawn by chance: others have an Isla too
        sync::Post post = m_morven->open()->post;
        const auto askedInto = [&post](const std::string &box) {
            return sync::homeAskedInto(post, box, Role::Parent, false)->value;
        };
        QCOMPARE(askedInto(finsBox), std::string("h-fin"));
        const std::string first = askedInto(isla->id.value);
        QVERIFY(!first.empty() && first != "h-fin");
    }

    /// He knows no child: whose box it becomes is said on a phone that does.
    void whoOnlyPacksHandsOverToNobody()
    {
        QVERIFY(packAll(*m_callum, m_table, "K2"));
        const std::string before = stateOf(m_callum->database);
        QCOMPARE(codeOf(handsOver(*m_callum, "K2")), std::string("hand-over"));
        QCOMPARE(stateOf(m_callum->database), before);
        QVERIFY(store::BoxRepository(m_callum->database).boxes()->empty());
        QVERIFY(everybodyShares());
        QVERIFY(handsOver(*m_morven, "K2").ok());
        QVERIFY(everybodyShares());
        const auto status = store::ClinicRepository(m_callum->database).status("K2");
        QVERIFY(*status && (*status)->standing == workbench::Standing::Issued);
        QVERIFY(store::BoxRepository(m_callum->database).boxes()->empty());
    }

    /// Not a key, not a word, and not a name on the storage that it could work out.
    void aFamilysPhoneKnowsNothingOfIt()
    {
        QVERIFY(packAll(*m_callum, m_table, "K1"));
        QVERIFY(everybodyShares());
        QVERIFY(!eventsIn(m_callum->database, LaneKind::Clinic).empty());
        QCOMPARE(eventsIn(m_ruth->database, LaneKind::Clinic), std::string());
        QVERIFY(store::CrewRepository(m_ruth->database).crewOf(clinic)->empty());
        const std::string his = m_callum->workplace().device.id.value;
        const sync::CrewBook fins = bookOf(*m_ruth, finsBox);
        const sync::CrewBook tables = bookOf(*m_morven, clinic);
        for (const crew::Opening &opening : fins.openings())
            QVERIFY(opening.lane.kind != LaneKind::Clinic);
        std::set<std::string> hers; // every folder that Ruth can work out, for anybody
        for (const auto &held : fins.held()) {
            for (const char *device : {"d-Morven", his.c_str()})
                hers.insert(sync::folderName(held.epoch, {device}));
        }
        int ofTheTable = 0;
        const auto files = m_folder->files();
        for (const auto &held : tables.held()) {
            const std::string folder = sync::folderName(held.epoch, {"d-Morven"});
            QVERIFY(!hers.contains(folder));
            for (const auto &[place, bytes] : files)
                ofTheTable += place.folder == folder ? 1 : 0;
        }
        QVERIFY(ofTheTable > 0);
        const QRegularExpression hash("^[0-9a-f]{64}$");
        for (const auto &[place, bytes] : files) {
            QVERIFY(hash.match(QString::fromStdString(place.folder)).hasMatch());
            QVERIFY(hash.match(QString::fromStdString(place.name)).hasMatch());
            for (const char *word : {"clinic", "Callum", "Morven", "Spring boxes"})
                QCOMPARE(bytes.find(word), std::string::npos);
        }
    }

    void whoIsTakenOutReadsNothingLater()
    {
        sync::Post post = m_morven->open()->post;
        const DeviceId his = m_callum->workplace().device.id;
        QVERIFY(sync::removeMember(post, clinic, his).ok());
        QVERIFY(packAll(*m_callum, m_table, "K1")); // said past what is accepted
        QVERIFY(packAll(*m_morven, m_table, "K3"));
        QVERIFY(m_morven->share(storage()).has_value());
        const auto shared = m_callum->share(storage());
        QVERIFY(shared && shared->boxes.at(clinic).out);
        QVERIFY(!boxOn(*m_callum, m_table, "K3").isReady());
        QVERIFY(m_morven->share(storage()).has_value());
        QVERIFY(!boxOn(*m_morven, m_table, "K1").isReady());
        QVERIFY(boxOn(*m_morven, m_table, "K3").isReady());
        QVERIFY(rowsMatch(*m_morven));
        QVERIFY(rowsMatch(*m_callum));
        // By a new code he is back, and what he said meanwhile comes with him.
        auto opened = m_callum->open();
        QVERIFY(sync::comeAnew(opened->post, m_callum->keeper).ok());
        QVERIFY(callumComesIn() == sync::Step::In);
        QVERIFY(everybodyShares(3));
        sameTableForBoth();
        QVERIFY(boxOn(*m_callum, m_table, "K3").isReady());
    }

    /// A family's phone founds no clinic, and nobody but a packer comes into one.
    void onlyWhoPacksComesIn()
    {
        sync::Post ruths = m_ruth->open()->post;
        QVERIFY(!sync::foundCrew(ruths, clinic).ok());
        sync::Post post = m_morven->open()->post;
        for (const Role role : {Role::Parent, Role::Caregiver, Role::Guest})
            QVERIFY(!sync::invite(post, clinic, {role, {"h-fin"}, *dayFrom({2027, 1, 5})}).ok());
        QVERIFY(!sync::letIn(post, clinic, sync::memberOf(ruths.device, ruths.secret)).ok());
    }

    /// The lane of that crew is no box, whatever is said in it.
    void whatIsSaidThereMakesNoBox()
    {
        sync::Post post = m_callum->open()->post;
        auto recording = store::Recording::begin(post.database, post.device, post.clock);
        const journal::Lane lane{LaneKind::Box, clinic};
        QVERIFY(recording->say(lane, journal::Kind::Child, R"({"alias":"Fin","child":"c-nobody"})")
                    .ok());
        QVERIFY(recording->commit().ok());
        QVERIFY(everybodyShares());
        for (NewPhone *phone : {m_morven.get(), m_callum.get()}) {
            const auto boxes = store::BoxRepository(phone->database).boxes();
            QVERIFY(std::ranges::none_of(
                *boxes, [](const store::BoxRow &box) { return box.id.value == clinic; }));
            QVERIFY(rowsMatch(*phone));
        }
    }
};

QTEST_GUILESS_MAIN(TestClinicCrew)
#include "tst_clinic_crew.moc"
