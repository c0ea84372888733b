#include <QtTest>

#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/take_out.h"
#include "core/usecase/video_session.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;
using namespace lidlark::usecase;

namespace {

const ActivityId dropper{"dropper-constellation"};
const ActivityId crayon{"turnabout-crayon"};
const ActivityId cups{"cup-telegraph"};
const ItemId bands{"bands"};

workbench::VideoPlan planOf(std::vector<ActivityId> activities, std::vector<ActivityId> spares)
{
    return {{},   {}, *dayFromText("2027-01-25"), 600, 1, std::move(activities), std::move(spares),
            false};
}

} // namespace

/// Scenario 7 of job.md as far as the video session goes, and T14.
class TestVideoSession : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_peigi;

    VideoChoices choices()
    {
        Workplace workplace = m_morven->workplace();
        auto found = videoChoices(workplace, "Mairead", *dayFromText("2027-01-25"));
        if (!found)
            qFatal("%s", found.error().detail.c_str());
        return *std::move(found);
    }
    Result<std::string> plans(const workbench::VideoPlan &plan)
    {
        Workplace workplace = m_morven->workplace();
        return planVideo(workplace, "Mairead", plan);
    }
    static std::vector<VideoSession> sessionsOn(Phone &phone)
    {
        Workplace workplace = phone.workplace();
        const auto family = loadFamily(workplace, "Mairead");
        return *videoSessions(workplace, *family, store::todayOf(phone.clock)->day);
    }
    bool isOpen(const ActivityId &activity)
    {
        const auto now = choices();
        return std::ranges::any_of(now.open, [&](const safety::Admitted &admitted) {
            return admitted.activity().id == activity;
        });
    }
    Outcome revises(std::map<ItemId, int> packed)
    {
        Workplace workplace = m_morven->workplace();
        return reviseBox(workplace, "Mairead", "Morven", packed);
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Mairead"});
        m_peigi = std::make_unique<Phone>("Peigi", store::Role::Parent, "h-mairead");
        m_peigi->meet(*m_morven);
    }

    void theFamilyHasTheListOffline()
    {
        QVERIFY(plans(planOf({dropper, crayon}, {cups})).ok());
        m_peigi->meet(*m_morven);
        const auto sessions = sessionsOn(*m_peigi);
        QCOMPARE(sessions.size(), std::size_t{1});
        QCOMPARE(sessions[0].plan.minuteOfDay, 600);
        QVERIFY(!sessions[0].listHasChanged);
        // The dropper is at school.
        Workplace peigis = m_peigi->workplace();
        QVERIFY(sayAtHand(peigis, "Mairead", sessions[0].plan.id, {"dropper"}, false).ok());
        QVERIFY(sessionsOn(*m_peigi)[0].parts[0].played == cups);
        m_morven->meet(*m_peigi);
        QVERIFY(sessionsOn(*m_morven)[0].parts[0].played == cups);
        const auto refolded = store::Projector(m_peigi->database).matchesRefold();
        QVERIFY(refolded && *refolded);
    }

    /// "The next video plan uses only what both revisions share."
    void onlyWhatBothListsShare()
    {
        QVERIFY(isOpen(dropper));
        std::map<ItemId, int> packed = island::standardBox();
        packed.erase({"dropper"});
        packed[{"loops"}] = 6;
        QVERIFY(revises(packed).ok());
        const auto now = choices();
        QVERIFY(now.awaitsConfirmation);
        QCOMPARE(now.revision, 2);
        const auto problems = problemsOf(planOf({dropper, crayon}, {}), now, realCatalogue());
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY(problems[0].activity == dropper && problems[0].why == NotInPlan::ToTakeOut);
        QCOMPARE(problems[0].item, ItemId{"dropper"});
        const auto refused = plans(planOf({dropper, crayon}, {}));
        QVERIFY(!refused);
        QCOMPARE(refused.error().detail, std::string("activity: dropper-constellation"));
        // Nothing that the suggestion holds needs what is on its way.
        for (const rotation::ArcPart &part : now.suggested.parts) {
            for (const catalogue::ItemUse &use : part.offer.admitted.items())
                QVERIFY(use.item != ItemId{"loops"} && use.item != ItemId{"dropper"});
        }
        // Once Peigi has said that it is out, the board is quiet again.
        m_peigi->meet(*m_morven);
        Workplace peigis = m_peigi->workplace();
        QVERIFY(confirmTakenOut(peigis, "Mairead", "Peigi", {"dropper"}).ok());
        m_morven->meet(*m_peigi);
        QVERIFY(!choices().awaitsConfirmation);
    }

    void aPlanOfAnOlderListSaysSo()
    {
        QVERIFY(plans(planOf({crayon}, {cups})).ok());
        std::map<ItemId, int> packed = island::standardBox();
        packed.erase(bands);
        QVERIFY(revises(packed).ok());
        QVERIFY(sessionsOn(*m_morven)[0].listHasChanged);
    }

    /// "High-energy offers for Mairead" is a trap: she tires fast.
    void theSuggestionIsAnArc()
    {
        const auto now = choices();
        QVERIFY(now.family.child.energyLimited);
        QCOMPARE(now.suggested.parts.size(), std::size_t{3});
        std::set<ActivityId> once;
        for (const rotation::ArcPart &part : now.suggested.parts) {
            const catalogue::Activity &activity = part.offer.admitted.activity();
            QVERIFY(once.insert(activity.id).second);
            QVERIFY(activity.videoOk && activity.energy != catalogue::Energy::High);
            QVERIFY(rotation::mayStandAt(part.place, part.offer.admitted, now.family.child));
        }
        using catalogue::Effect;
        QVERIFY(now.suggested.parts[2].offer.admitted.activity().effect == Effect::Settling);
        QVERIFY(now.suggested.parts[1].offer.admitted.activity().effect != Effect::Settling);
        QVERIFY(now.suggested.spare);
        QVERIFY(once.insert(now.suggested.spare->admitted.activity().id).second);
        // What is missing from the box does not take the spare along.
        std::set<ItemId> used;
        for (const rotation::ArcPart &part : now.suggested.parts) {
            for (const catalogue::ItemUse &use : part.offer.admitted.items())
                used.insert(use.item);
        }
        for (const catalogue::ItemUse &use : now.suggested.spare->admitted.items())
            QVERIFY(use.source != catalogue::Source::Box || !used.contains(use.item));
    }

    /// Whoever lives there: each place is filled as it may be, nothing stands twice.
    void everyFamilyOfTheIslandHasAnArc_data()
    {
        QTest::addColumn<QString>("child");
        for (const island::Family &family : island::families())
            QTest::newRow(family.child.c_str()) << QString::fromStdString(family.child);
    }
    void everyFamilyOfTheIslandHasAnArc()
    {
        QFETCH(QString, child);
        const auto morven = therapistWith({child.toStdString()});
        Workplace workplace = morven->workplace();
        const Day today = store::todayOf(morven->clock)->day;
        for (const int days : {0, 7, 20}) {
            const auto found = videoChoices(workplace, child.toStdString(), today + days);
            QVERIFY(found.ok());
            QCOMPARE(found->suggested.parts.size(), std::size_t{3});
            QVERIFY(found->suggested.spare);
            std::set<ActivityId> once{found->suggested.spare->admitted.activity().id};
            std::set<catalogue::Skill> families;
            for (const rotation::ArcPart &part : found->suggested.parts) {
                QVERIFY(rotation::mayStandAt(part.place, part.offer.admitted, found->family.child));
                QVERIFY(once.insert(part.offer.admitted.activity().id).second);
                families.insert(part.offer.admitted.activity().family());
            }
            QCOMPARE(families.size(), std::size_t{3});
        }
    }

    void theBoxAtSchoolIsNoReason()
    {
        Workplace workplace = m_morven->workplace();
        QVERIFY(sayPlace(workplace, "Mairead", "school", "at school").ok());
        QVERIFY(isOpen(dropper));
    }

    void badPlansAreRefused_data()
    {
        QTest::addColumn<QString>("what");
        for (const char *what : {"none", "four", "twice", "unknown", "yesterday", "late", "spares"})
            QTest::newRow(what) << what;
    }
    void badPlansAreRefused()
    {
        QFETCH(QString, what);
        auto plan = planOf({crayon}, {cups});
        if (what == "none")
            plan.activities.clear();
        if (what == "four")
            plan.activities = {dropper, crayon, cups, {"slow-oars"}};
        if (what == "twice")
            plan.activities = {crayon, crayon};
        if (what == "unknown")
            plan.activities = {{"no-such-thing"}};
        if (what == "yesterday")
            plan.day = store::todayOf(m_morven->clock)->day - 1;
        if (what == "late")
            plan.minuteOfDay = 1500;
        if (what == "spares")
            plan.spares = {dropper, cups, {"slow-oars"}};
        const auto refused = plans(plan);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Invalid);
        QVERIFY(sessionsOn(*m_morven).empty());
    }

    void onlyTheTherapistPlans()
    {
        Workplace peigis = m_peigi->workplace();
        const auto refused = planVideo(peigis, "Mairead", planOf({crayon}, {}));
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::NotAllowed);
    }

    void calledOffIsGone()
    {
        const auto plan = plans(planOf({crayon}, {cups}));
        QVERIFY(plan.ok());
        Workplace workplace = m_morven->workplace();
        QVERIFY(callOffVideo(workplace, "Mairead", *plan).ok());
        m_peigi->meet(*m_morven);
        QVERIFY(sessionsOn(*m_peigi).empty());
        QVERIFY(!callOffVideo(workplace, "Mairead", "nothing").ok());
    }

    void onlyThingsOfThePlanAreAskedAfter()
    {
        const auto plan = plans(planOf({crayon}, {}));
        m_peigi->meet(*m_morven);
        Workplace peigis = m_peigi->workplace();
        QVERIFY(!sayAtHand(peigis, "Mairead", *plan, {"dropper"}, true).ok());
        QVERIFY(!sayAtHand(peigis, "Mairead", "nothing", {"crayons"}, true).ok());
        QVERIFY(sayAtHand(peigis, "Mairead", *plan, {"crayons"}, true).ok());
    }
};

QTEST_APPLESS_MAIN(TestVideoSession)
#include "tst_video_session.moc"
