#include <QtTest>

#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/progress.h"
#include "core/usecase/search_floor.h"
#include "core/wording/floor_words.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;
using box::ExceptionKind;
using usecase::MenuRequest;

namespace {

const ActivityId lights{"hidden-harbour-lights"};

bool isHeldBack(const usecase::TodayMenu &today, const ActivityId &activity,
                safety::ReasonCode code)
{
    for (const safety::HeldBack &held : today.gated.heldBack) {
        if (held.activity->id != activity)
            continue;
        return std::any_of(held.reasons.begin(), held.reasons.end(),
                           [code](const safety::Reason &reason) { return reason.code == code; });
    }
    return false;
}

bool isAdmitted(const usecase::TodayMenu &today, const ActivityId &activity)
{
    return std::any_of(
        today.gated.admitted.begin(), today.gated.admitted.end(),
        [&](const safety::Admitted &admitted) { return admitted.activity().id == activity; });
}

} // namespace

/// job.md scenario 5: four of six eyes, and a two-year-old; safety.md SP-06.
class TestScenario05 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_catriona;

    usecase::TodayMenu menu(bool mirrenHere)
    {
        MenuRequest request;
        request.child = "Lewis";
        request.room.present.emplace();
        if (mirrenHere)
            request.room.present->push_back({"p-mirren"});
        usecase::Workplace workplace = m_catriona->workplace();
        auto today = usecase::suggestToday(workplace, request);
        if (!today)
            qFatal("%s", today.error().detail.c_str());
        return *std::move(today);
    }

    PlayId playLights()
    {
        usecase::Workplace workplace = m_catriona->workplace();
        return *usecase::startPlay(workplace, {"Lewis", lights, "Catriona", std::nullopt});
    }

    void loseTwo()
    {
        usecase::Workplace workplace = m_catriona->workplace();
        const PlayId play = playLights();
        QVERIFY(usecase::putBack(workplace, play, "Catriona",
                                 {{{"eyes"}, box::ExceptionKind::Lost, 2}}, {{{"eyes"}, 4}})
                    .ok());
    }

    usecase::FloorSearch search()
    {
        usecase::Workplace workplace = m_catriona->workplace();
        const auto family = usecase::loadFamily(workplace, "Lewis");
        return usecase::floorSearchOf(*family, realCatalogue(), *dayFrom({2027, 1, 15}));
    }

    Outcome find(int pieces)
    {
        usecase::Workplace workplace = m_catriona->workplace();
        return usecase::notePiecesFound(workplace, "Lewis", "Catriona", {{{"eyes"}, pieces}});
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Lewis"});
        m_catriona = std::make_unique<Phone>("Catriona", store::Role::Parent, "h-lewis");
        m_catriona->clock.moveTo(islandTime(15, 19, 20)); // Friday
        QVERIFY(m_catriona->meet(*m_morven) > 0);
    }

    void asleepTheEyesMayComeOutRightBeside()
    {
        const auto today = menu(false);
        QVERIFY(isAdmitted(today, lights));
        for (const safety::Admitted &admitted : today.gated.admitted) {
            if (admitted.activity().id == lights)
                QCOMPARE(admitted.supervision(), catalogue::Supervision::Beside);
        }
    }

    /// The ten tags of job.md F2. A stretch band is not among them: activities.md section 5 counts
    /// A45, A60 and A79 among what may be offered beside a mouther.
    void withMirrenInTheRoomNothingForHerMouthIsOfferedAndEachRefusalSaysWhy()
    {
        const auto today = menu(true);
        QVERIFY(today.menu.offers.size() == 3);
        using enum catalogue::Tag;
        const catalogue::TagSet hard{Small, Coin,  Balloon, Elastic, Foam,
                                     Foil,  Straw, Sticker, Cord,    Dough};
        for (const safety::Admitted &admitted : today.gated.admitted)
            QVERIFY2((admitted.cautions() & hard).empty(), admitted.activity().id.value.c_str());
        for (const safety::HeldBack &held : today.gated.heldBack)
            QVERIFY2(!held.reasons.empty(), held.activity->id.value.c_str());
        QVERIFY(isHeldBack(today, lights, safety::ReasonCode::MoutherInRoom) ||
                isHeldBack(today, lights, safety::ReasonCode::UnderThreeInRoom));
    }

    /// safety.md SP-04: "the closing count is mandatory for every item with a small part", where a
    /// second child under 36 months lives, in the room or not.
    void withoutTheClosingCountNoPlayEnds()
    {
        usecase::Workplace workplace = m_catriona->workplace();
        const PlayId play = playLights();
        const usecase::CountedHome five{{{"eyes"}, 5}};
        for (const usecase::CountedHome &counted : {usecase::CountedHome{}, five}) {
            const Outcome back = usecase::putBack(workplace, play, "Catriona", {}, counted);
            QVERIFY(!back.ok());
            QVERIFY2(back.error().detail.starts_with("eyes: count them home first"),
                     back.error().detail.c_str());
            QVERIFY(!usecase::stopPlay(workplace, play, "Catriona", {}, counted).ok());
        }
        const std::vector<usecase::NamedException> two{{{"eyes"}, ExceptionKind::Lost, 2}};
        QVERIFY(!usecase::putBack(workplace, play, "Catriona", two, {{{"eyes"}, 3}}).ok());
        QVERIFY(!usecase::loadFamily(workplace, "Lewis")->plays.front().ending);
        QVERIFY(usecase::loadFamily(workplace, "Lewis")->losses.empty());
        QVERIFY(usecase::putBack(workplace, play, "Catriona", {}, {{{"eyes"}, 6}}).ok());
        // What is put right afterwards is no closing count.
        QVERIFY(usecase::putBack(workplace, play, "Catriona", two).ok());
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").low, 4);
    }

    void whatWasTappedHomeOnThePhoneIsCounted()
    {
        usecase::Workplace workplace = m_catriona->workplace();
        const PlayId play = playLights();
        const auto family = usecase::loadFamily(workplace, "Lewis");
        auto progress = usecase::loadProgress(workplace, family->box.id, family->child.id);
        (*progress)->home[{"eyes"}] = 6;
        QVERIFY(usecase::keepProgress(workplace, family->box.id, **progress).ok());
        QVERIFY(usecase::stopPlay(workplace, play, "Catriona", {}).ok());
    }

    void lostIsNotUsedUp()
    {
        usecase::Workplace workplace = m_catriona->workplace();
        const PlayId play = playLights();
        QVERIFY(usecase::putBack(workplace, play, "Catriona",
                                 {{{"eyes"}, box::ExceptionKind::UsedUp, 2}}, {{{"eyes"}, 4}})
                    .ok());
        const auto family = usecase::loadFamily(workplace, "Lewis");
        QVERIFY(family->losses.empty());
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").low, 4);
    }

    void untilClosedEverythingSmallIsHiddenEvenWithMirrenOut()
    {
        loseTwo();
        const auto today = menu(false);
        for (const safety::Admitted &admitted : today.gated.admitted) {
            QVERIFY(!admitted.cautions().has(catalogue::Tag::Small));
            QVERIFY(!admitted.cautions().has(catalogue::Tag::Coin));
        }
        QVERIFY(isHeldBack(today, lights, safety::ReasonCode::FloorNoteOpen));
    }

    void stillHiddenTomorrow()
    {
        loseTwo();
        m_catriona->clock.moveTo(islandTime(16, 19, 20));
        QVERIFY(isHeldBack(menu(false), lights, safety::ReasonCode::FloorNoteOpen));
    }

    void foundOneLeavesOneOpen()
    {
        loseTwo();
        usecase::Workplace workplace = m_catriona->workplace();
        QVERIFY(usecase::noteFound(workplace, "Lewis", "Catriona", {"eyes"}, 1).ok());
        const auto family = usecase::loadFamily(workplace, "Lewis");
        QCOMPARE(family->losses.size(), std::size_t{1});
        QCOMPARE(family->losses.front().pieces, 1);
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").low, 5);
        QVERIFY(isHeldBack(menu(false), lights, safety::ReasonCode::FloorNoteOpen));
    }

    void aCheckedFloorLetsThemReturnUnderTheOldConditionOnly()
    {
        loseTwo();
        usecase::Workplace workplace = m_catriona->workplace();
        QVERIFY(usecase::checkFloor(workplace, "Lewis", "Catriona").ok());
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").low, 4);
        // Four are too few for the entry as written: it comes back with the lids in their place.
        const auto asleep = menu(false);
        for (const safety::Admitted &admitted : asleep.gated.admitted) {
            if (admitted.activity().id == lights)
                QCOMPARE(admitted.swaps().at({"eyes"}).value, std::string("lids"));
        }
        QVERIFY(!isHeldBack(menu(false), lights, safety::ReasonCode::FloorNoteOpen));
        QVERIFY(isHeldBack(menu(true), lights, safety::ReasonCode::MoutherInRoom));
    }

    /// The words of scenario 5, and SP-06 before them: the child's hands and mouth first.
    void theWordsAreThoseOfTheScenario()
    {
        loseTwo();
        const auto looking = search();
        QVERIFY(looking.isUrgent());
        QCOMPARE(looking.missing.size(), std::size_t{1});
        const catalogue::ItemKind *eyes = realCatalogue().item({"eyes"});
        const std::vector<wording::Sentence> said{
            wording::piecesMissing(looking.missing.front().pieces, eyes->one, eyes->name),
            wording::lookAtHandsFirst(), wording::lookNow(false),
            wording::keepAway(looking.smallOnes)};
        std::string words;
        for (const wording::Sentence &sentence : said)
            words += wording::fill(sentence) + ' ';
        QCOMPARE(words, std::string("Two stick-on eyes are missing. "
                                    "First look at each child's hands and mouth. "
                                    "Look now: table, floor, clothes, dough. "
                                    "Keep Mirren away until found. "));
    }

    /// Count-out and count-in conserve pieces whichever way the search goes.
    void everyWayOfTheSearchCountsRight_data()
    {
        QTest::addColumn<QByteArray>("acts"); // digits: that many found; c: floor checked
        QTest::addColumn<int>("inBox");
        QTest::addColumn<int>("missing");
        QTest::newRow("nothing yet") << QByteArray("") << 4 << 2;
        QTest::newRow("both found") << QByteArray("2") << 6 << 0;
        QTest::newRow("one, then the other") << QByteArray("11") << 6 << 0;
        QTest::newRow("one, then checked") << QByteArray("1c") << 5 << 0;
        QTest::newRow("checked") << QByteArray("c") << 4 << 0;
        QTest::newRow("checked twice") << QByteArray("cc") << 4 << 0;
    }
    void everyWayOfTheSearchCountsRight()
    {
        QFETCH(QByteArray, acts);
        QFETCH(int, inBox);
        QFETCH(int, missing);
        loseTwo();
        usecase::Workplace workplace = m_catriona->workplace();
        for (const char act : acts) {
            if (act == 'c')
                QVERIFY(usecase::checkFloor(workplace, "Lewis", "Catriona").ok());
            else
                QVERIFY(find(act - '0').ok());
        }
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").low, inBox);
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").high, inBox);
        int open = 0;
        for (const usecase::MissingItem &item : search().missing)
            open += item.pieces;
        QCOMPARE(open, missing);
    }

    /// Checked first, found under the sofa next week: back in the box, and nothing opens anew.
    void foundLongAfterTheFloorWasChecked()
    {
        loseTwo();
        usecase::Workplace workplace = m_catriona->workplace();
        QVERIFY(usecase::checkFloor(workplace, "Lewis", "Catriona").ok());
        m_catriona->clock.moveTo(islandTime(22, 9, 0));
        QVERIFY(usecase::noteFound(workplace, "Lewis", "Catriona", {"eyes"}, 1).ok());
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").low, 5);
        QVERIFY(search().missing.empty());
    }

    void moreThanIsMissingCannotBeFound()
    {
        loseTwo();
        QVERIFY(!find(3).ok());
        QVERIFY(!find(0).ok());
        QVERIFY(find(1).ok());
        QVERIFY(!find(2).ok()); // one is left
        QCOMPARE(itemOf(*m_catriona, "Lewis", "eyes").low, 5);
    }

    void theTherapistsPhoneKnowsAfterMeeting()
    {
        loseTwo();
        m_morven->clock.moveTo(islandTime(16, 9, 0));
        QVERIFY(m_morven->meet(*m_catriona) > 0);
        usecase::Workplace workplace = m_morven->workplace();
        const auto family = usecase::loadFamily(workplace, "Lewis");
        QVERIFY(family.ok());
        QCOMPARE(family->losses.size(), std::size_t{1});
        QVERIFY(family->plays.empty()); // how often is played stays in the home (events.md 4)
    }
};

QTEST_APPLESS_MAIN(TestScenario05)
#include "tst_scenario_05_two_eyes_and_a_toddler.moc"
