#include <QtTest>

#include "crew_log.h"

using namespace lidlark;
using namespace lidlark::crew;
using namespace lidlark::test;
using journal::Kind;
using journal::Lane;
using journal::LaneKind;

namespace {

const std::map<std::string, Member> &people()
{
    static const std::map<std::string, Member> all{
        {"therapist", memberOf("morven", Role::Therapist)},
        {"parent", memberOf("ruth", Role::Parent, "h-fin")},
        {"caregiver", memberOf("gran", Role::Caregiver, "h-fin")},
        {"guest", memberOf("archie", Role::Guest, "h-fin")},
        {"other parent", memberOf("dad", Role::Parent, "h-dad")},
        {"other caregiver", memberOf("nan", Role::Caregiver, "h-dad")},
        {"other guest", memberOf("lodger", Role::Guest, "h-dad")}};
    return all;
}

/// "therapist, parent", of all seven.
using Who = std::string;
const Who nobody;
const Who everybody =
    "therapist, parent, caregiver, guest, other parent, other caregiver, other guest";
const Who noGuest = "therapist, parent, caregiver, other parent, other caregiver";
const Who lettersIn = "therapist, parent, other parent";
const Who thisHome = "parent, caregiver";
const Who thisHomeAndGuest = "parent, caregiver, guest";

template <class Test> Who whoOf(Test test)
{
    Who who;
    for (const char *name : {"therapist", "parent", "caregiver", "guest", "other parent",
                             "other caregiver", "other guest"}) {
        if (test(people().at(name)))
            who += (who.empty() ? "" : ", ") + std::string(name);
    }
    return who;
}

struct Right {
    Kind kind;
    Who box, safety, home, checkIns, goals;
};

/// events.md 4, column "written by", kind by kind. A kind that belongs to another lane has no
/// effect there, whoever may write in it.
const std::vector<Right> &rights()
{
    const Who safe = "therapist, parent, caregiver";
    const Who met = "therapist, parent, caregiver, guest";
    const Who goals = "therapist, parent, other parent";
    static const std::vector<Right> table{
        // kind, box, safety, home, check-ins, goals
        {Kind::Met, everybody, met, thisHomeAndGuest, thisHome, goals},
        {Kind::Child, lettersIn, safe, thisHome, thisHome, goals},
        {Kind::Member, lettersIn, safe, thisHome, thisHome, goals},
        {Kind::Revision, "therapist", safe, thisHome, thisHome, goals},
        {Kind::Outcome, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Exception, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Found, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Count, noGuest, safe, thisHome, thisHome, goals},
        {Kind::FloorChecked, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Opened, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::LeftOpen, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Checked, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Limit, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Hygiene, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::TakenOut, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Place, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Request, noGuest, safe, thisHome, thisHome, goals},
        {Kind::CountedIn, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Answer, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Fact, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Permission, noGuest, "therapist", thisHome, thisHome, goals},
        {Kind::PlayStarted, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::PlayEnded, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Reaction, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::Offered, noGuest, safe, thisHome, thisHome, goals},
        {Kind::CheckIn, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Goal, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Grading, noGuest, safe, thisHome, thisHome, goals},
        {Kind::GradingPin, "therapist", safe, thisHome, thisHome, goals},
        {Kind::Planned, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Reads, noGuest, safe, thisHome, thisHome, goals},
        {Kind::OurWay, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Note, noGuest, safe, thisHome, thisHome, goals},
        {Kind::NoteSent, noGuest, safe, thisHome, thisHome, goals},
        {Kind::TakenBack, everybody, safe, thisHomeAndGuest, thisHome, goals},
        {Kind::MemberRemoved, everybody, safe, thisHome, thisHome, goals},
        {Kind::Epoch, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Erased, lettersIn, "parent", "parent", "parent", goals},
        {Kind::GoalRated, noGuest, safe, thisHome, thisHome, goals},
        {Kind::VideoPlan, "therapist", safe, thisHome, thisHome, goals},
        {Kind::HaveReady, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Supply, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Design, noGuest, safe, thisHome, thisHome, goals},
        {Kind::Build, noGuest, safe, thisHome, thisHome, goals},
        {Kind::PackMark, noGuest, safe, thisHome, thisHome, goals},
        {Kind::BoxStatus, noGuest, safe, thisHome, thisHome, goals},
        {Kind::OwnActivity, noGuest, safe, thisHome, thisHome, goals},
        {Kind::OwnItem, noGuest, safe, thisHome, thisHome, goals},
        {Kind::OwnEntry, "therapist", safe, thisHome, thisHome, goals},
        {Kind::Sharing, noGuest, safe, thisHome, thisHome, goals}};
    return table;
}

} // namespace

/// Who may read and write what (events.md 4 and 10), the whole of it by hand: role x lane x kind.
class TestRights : public QObject
{
    Q_OBJECT

private slots:
    void everyKindIsInTheTable()
    {
        std::set<Kind> kinds;
        for (const Right &right : rights())
            kinds.insert(right.kind);
        QCOMPARE(kinds.size(), std::size_t{50}); // journal::kindNames
        QCOMPARE(rights().size(), kinds.size());
    }

    void whoReads()
    {
        const auto readers = [](LaneKind kind, const std::string &scope) {
            return whoOf([&](const Member &member) { return mayRead(member, {kind, scope}); });
        };
        QCOMPARE(readers(LaneKind::Box, "b-fin"), everybody);
        QCOMPARE(readers(LaneKind::Safety, "h-fin"), Who("therapist, parent, caregiver, guest"));
        QCOMPARE(readers(LaneKind::Home, "h-fin"), thisHome);
        QCOMPARE(readers(LaneKind::CheckIns, "h-fin"), thisHome);
        QCOMPARE(readers(LaneKind::Goals, "b-fin"), lettersIn);
        QCOMPARE(readers(LaneKind::Shared, "h-fin:plays"), Who("therapist, parent, caregiver"));
        QCOMPARE(readers(LaneKind::Shared, "h-fin"), Who("therapist")); // of no kind
        QCOMPARE(readers(LaneKind::Notes, "d-ruth"), nobody);
        QCOMPARE(readers(LaneKind::Clinic, "d-morven"), Who("therapist"));
    }

    void whoWrites_data()
    {
        QTest::addColumn<int>("row");
        for (std::size_t row = 0; row < rights().size(); ++row)
            QTest::newRow(std::string(journal::kindNames.of(rights()[row].kind)).c_str())
                << int(row);
    }
    void whoWrites()
    {
        QFETCH(int, row);
        const Right &right = rights()[static_cast<std::size_t>(row)];
        const auto writers = [&](LaneKind kind, const std::string &scope) {
            return whoOf([&](const Member &member) {
                return mayWrite(member, {kind, scope}, right.kind, true);
            });
        };
        QCOMPARE(writers(LaneKind::Box, "b-fin"), right.box);
        QCOMPARE(writers(LaneKind::Safety, "h-fin"), right.safety);
        QCOMPARE(writers(LaneKind::Home, "h-fin"), right.home);
        QCOMPARE(writers(LaneKind::CheckIns, "h-fin"), right.checkIns);
        QCOMPARE(writers(LaneKind::Goals, "b-fin"), right.goals);
        // "Written by that home": whoever of it may read, and erase a copy as well.
        QCOMPARE(writers(LaneKind::Shared, "h-fin:plays"), thisHome);
    }

    /// "Revisions only the therapist", where there is one: a family with a box of its own has none.
    void withoutATherapistParentsWriteTheLidList()
    {
        QCOMPARE(whoOf([](const Member &member) {
                     return mayWrite(member, box, Kind::Revision, false);
                 }),
                 lettersIn);
        QCOMPARE(whoOf([](const Member &member) {
                     return mayWrite(member, box, Kind::GradingPin, false);
                 }),
                 Who("therapist"));
    }

    void whoVouchesAndWhoOpens()
    {
        QCOMPARE(whoOf(vouches), lettersIn);
        const auto openers = [](LaneKind kind, const std::string &scope) {
            return whoOf([&](const Member &member) { return mayOpen(member, {kind, scope}); });
        };
        QCOMPARE(openers(LaneKind::Box, "b-fin"), noGuest);
        QCOMPARE(openers(LaneKind::Safety, "h-fin"), Who("therapist, parent, caregiver"));
        QCOMPARE(openers(LaneKind::Home, "h-fin"), thisHome);
        QCOMPARE(openers(LaneKind::Goals, "b-fin"), lettersIn);
    }

    /// events.md 10: "A parent removes only devices of the own home and the own guests; a home
    /// leaves by itself; the therapist ... close the box."
    void whoRemovesWhom()
    {
        const auto removers = [](const char *target) {
            return whoOf(
                [&](const Member &member) { return mayRemove(member, people().at(target)); });
        };
        QCOMPARE(removers("therapist"), Who("therapist"));
        QCOMPARE(removers("parent"), Who("therapist, parent"));
        QCOMPARE(removers("caregiver"), Who("therapist, parent, caregiver"));
        QCOMPARE(removers("guest"), Who("therapist, parent, guest"));
        QCOMPARE(removers("other guest"), Who("therapist, other parent, other guest"));
    }

    /// What a phone was before, it says itself.
    void whoHandsOnWhoseWords()
    {
        CrewLog log;
        log.found(people().at("therapist"));
        log.letIn("morven", people().at("parent"));
        log.letIn("ruth", people().at("caregiver"));
        const auto with = [&](const char *name, const std::string &was) {
            Member member = people().at(name);
            member.device = {"new"};
            member.was = {was};
            return member;
        };
        const Crew crew = log.fold();
        QVERIFY(mayHandOn(crew, with("caregiver", "gran"), {"gran"}));
        QVERIFY(mayHandOn(crew, with("caregiver", ""), {"new"}));
        QVERIFY(mayHandOn(crew, with("parent", ""), {"gran"}));
        QVERIFY(!mayHandOn(crew, with("caregiver", "ruth"), {"ruth"}));
        QVERIFY(!mayHandOn(crew, with("guest", "morven"), {"morven"}));
        QVERIFY(!mayHandOn(crew, with("other caregiver", "gran"), {"gran"}));
        QVERIFY(!mayHandOn(crew, with("caregiver", "gran"), {"ruth"}));
        QVERIFY(!mayHandOn(crew, with("caregiver", "nobody"), {"nobody"}));
    }
};

QTEST_APPLESS_MAIN(TestRights)
#include "tst_rights.moc"
