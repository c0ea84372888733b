#include <QtTest>

#include "core/rotation/choose_menu.h"
#include "tests/core/rotation/menu_samples.h"

#include <algorithm>
#include <random>

using namespace lidlark;
using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;
using catalogue::Activity;
using catalogue::Skill;
using catalogue::Space;

namespace {

/// Entries of different families, all liked, that nothing but the rank tells apart.
Shelf alike(const std::vector<std::string> &ids)
{
    Shelf shelf;
    for (std::size_t i = 0; i < ids.size(); ++i)
        shelf.add(ids[i], [&](Activity &a) { a.skillsMain = {static_cast<Skill>(i)}; });
    return shelf;
}

Question everythingPractised()
{
    Question question = questionFor(fin());
    question.minutesThisWeek.fill(60);
    return question;
}

void likeAll(Question &question, const Shelf &shelf)
{
    for (std::size_t i = 0; i < shelf.size(); ++i)
        question.records[shelf.at(i).id] = knownFriend();
}

std::vector<std::string> sorted(std::vector<std::string> ids)
{
    std::ranges::sort(ids);
    return ids;
}

using Ids = std::vector<std::string>;

} // namespace

class TestChooseMenu : public QObject
{
    Q_OBJECT

private slots:
    // Source: Python 3.11 hashlib (BLAKE2b, RFC 7693), each line from
    //   hashlib.blake2b("\0".join(["fin", "2027-01-11", "evening", ID]).encode(),
    //                   digest_size=32).digest()[:8].hex()
    void rankIsTheStartOfTheDigest_data()
    {
        QTest::addColumn<QString>("id");
        QTest::addColumn<quint64>("rank");
        QTest::newRow("slow-oars") << "slow-oars" << quint64{0xca5513bdcd6e5234};
        QTest::newRow("hidden-harbour-lights")
            << "hidden-harbour-lights" << quint64{0xb83d7cb3da0e527b};
        QTest::newRow("window-tally") << "window-tally" << quint64{0x965e83f7593078e1};
        QTest::newRow("sail-tug") << "sail-tug" << quint64{0x9b22dde370eb6594};
    }
    void rankIsTheStartOfTheDigest()
    {
        QFETCH(QString, id);
        QTEST(quint64{rankOf({"fin"}, firstDay(), PartOfDay::Evening, {id.toStdString()})}, "rank");
    }

    // The smallest three of the ranks above, in their order.
    void equalsAreChosenByRank()
    {
        const Shelf shelf =
            alike({"hidden-harbour-lights", "sail-tug", "slow-oars", "window-tally"});
        Question question = everythingPractised();
        question.part = PartOfDay::Evening;
        likeAll(question, shelf);
        const auto candidates = shelf.candidates();
        QCOMPARE(idsOf(draftMenu(candidates, question), candidates),
                 (Ids{"window-tally", "sail-tug", "hidden-harbour-lights"}));
    }

    void theOrderOfTheCatalogueDoesNotMatter()
    {
        const Shelf shelf = alike({"a", "b", "c", "d", "e", "f", "g", "h", "i"});
        Question question = questionFor(fin());
        likeAll(question, shelf);
        auto candidates = shelf.candidates();
        const Ids before = idsOf(draftMenu(candidates, question), candidates);
        std::mt19937 source(3);
        for (int i = 0; i < 20; ++i) {
            std::ranges::shuffle(candidates, source);
            QCOMPARE(idsOf(draftMenu(candidates, question), candidates), before);
        }
    }

    // Source: job.md F1 and design.md 5, "in a new home everything is".
    void dayOneOfANewHomeHasThreeOffersAlthoughAllAreNew()
    {
        const Shelf shelf = alike({"a", "b", "c", "d", "e", "f"});
        const auto candidates = shelf.candidates();
        const MenuDraft draft = draftMenu(candidates, questionFor(fin()));
        QCOMPARE(draft.picks.size(), std::size_t{3});
        QVERIFY((draft.gaveWay == std::vector{SideCondition::OneNew, SideCondition::KnownFriend}));
    }

    void aConditionThatNothingCanSatisfyIsNamed_data()
    {
        QTest::addColumn<int>("condition");
        QTest::newRow("no known friend") << static_cast<int>(SideCondition::KnownFriend);
        QTest::newRow("all at a table") << static_cast<int>(SideCondition::WithoutTable);
        QTest::newRow("all of one family") << static_cast<int>(SideCondition::Family);
        QTest::newRow("all messy") << static_cast<int>(SideCondition::OneMess);
    }
    void aConditionThatNothingCanSatisfyIsNamed()
    {
        QFETCH(int, condition);
        const auto missing = static_cast<SideCondition>(condition);
        Shelf shelf;
        for (int i = 0; i < 5; ++i) {
            shelf.add(std::to_string(i), [&](Activity &a) {
                const bool oneFamily = missing == SideCondition::Family;
                a.skillsMain = {static_cast<Skill>(oneFamily ? 0 : i)};
                a.space = missing == SideCondition::WithoutTable ? Space::Table : Space::Mat;
                a.mess = missing == SideCondition::OneMess ? 2 : 0;
            });
        }
        Question question = questionFor(fin());
        for (int i = 0; i < 5; ++i) {
            const bool liked = missing != SideCondition::KnownFriend;
            question.records[{std::to_string(i)}] = liked ? knownFriend() : playedOnce();
        }
        const MenuDraft draft = draftMenu(shelf.candidates(), question);
        QCOMPARE(draft.picks.size(), std::size_t{3});
        QVERIFY(draft.gaveWay == std::vector{missing});
    }

    void aSecondNewOneGivesWayBeforeASecondOfAFamily()
    {
        Shelf shelf;
        shelf.add("friend", [](Activity &a) { a.skillsMain = {Skill::Pin}; });
        shelf.add("new-one", [](Activity &a) { a.skillsMain = {Skill::Bil}; });
        shelf.add("new-two", [](Activity &a) { a.skillsMain = {Skill::Vmi}; });
        shelf.add("cousin", [](Activity &a) { a.skillsMain = {Skill::Pin}; });
        Question question = questionFor(fin());
        question.records[{"friend"}] = knownFriend();
        question.records[{"cousin"}] = playedOnce();
        question.records[{"cousin"}].daysSinceOffered = 90;
        const auto candidates = shelf.candidates();
        const MenuDraft draft = draftMenu(candidates, question);
        QCOMPARE(sorted(idsOf(draft, candidates)), (Ids{"friend", "new-one", "new-two"}));
        QVERIFY(draft.gaveWay == std::vector{SideCondition::OneNew});
    }

    void twoEntriesMakeTwoOffersAndNoneMakesNone()
    {
        const Shelf two = alike({"a", "b"});
        QCOMPARE(draftMenu(two.candidates(), questionFor(fin())).picks.size(), std::size_t{2});
        QCOMPARE(draftMenu({}, questionFor(fin())).picks.size(), std::size_t{0});
    }

    void nothingPlayedTodayOrSetAsideIsOffered()
    {
        const Shelf shelf = alike({"a", "b", "c", "d", "e"});
        Question question = questionFor(fin());
        likeAll(question, shelf);
        question.playedToday = {{"a"}};
        question.without = {{"b"}};
        const auto candidates = shelf.candidates();
        QCOMPARE(sorted(idsOf(draftMenu(candidates, question), candidates)), (Ids{"c", "d", "e"}));
    }

    // Source: design.md 5, "the minutes the family has, for each offer by itself".
    void minutesBindEachOfferByItself()
    {
        Shelf shelf;
        for (int i = 0; i < 3; ++i)
            shelf.add("short" + std::to_string(i), [](Activity &a) { a.minutes = {1, 5, 1}; });
        shelf.add("long", [](Activity &a) { a.minutes = {1, 5, 2}; });
        Question question = questionFor(fin());
        question.minutes = 7;
        const auto candidates = shelf.candidates();
        QCOMPARE(sorted(idsOf(draftMenu(candidates, question), candidates)),
                 (Ids{"short0", "short1", "short2"}));
        question.minutes = 6;
        QCOMPARE(draftMenu(candidates, question).picks.size(), std::size_t{0});
    }

    void theOffersTogetherStayWithinTheBox()
    {
        Shelf shelf = alike({"a", "b", "c"});
        shelf.add("pegs-one", [](Activity &a) {
            a.skillsMain = {Skill::Str};
            a.items = {boxUse("pegs", 4)};
        });
        shelf.add("pegs-two", [](Activity &a) {
            a.skillsMain = {Skill::Soc};
            a.items = {boxUse("pegs", 4)};
        });
        Question question = questionFor(fin());
        likeAll(question, shelf);
        for (const char *id : {"pegs-one", "pegs-two"})
            question.records[{id}].daysSinceOffered = 60;
        const auto candidates = shelf.candidates();
        const auto pegGames = [&] {
            const Ids ids = idsOf(draftMenu(candidates, question), candidates);
            return std::ranges::count(ids, "pegs-one") + std::ranges::count(ids, "pegs-two");
        };
        QCOMPARE(pegGames(), 0); // no count of pegs: none can be promised
        question.stock[{"pegs"}] = 7;
        QCOMPARE(pegGames(), 1);
        question.stock[{"pegs"}] = 8;
        QCOMPARE(pegGames(), 2);
    }

    void whatIsOnlyNiceToHaveDoesNotKeepAnythingOut()
    {
        Shelf shelf;
        shelf.add("nicer-with-pegs", [](Activity &a) {
            a.items = {boxUse("pegs", 6)};
            a.items.front().role = catalogue::Role::Nice;
        });
        QCOMPARE(draftMenu(shelf.candidates(), questionFor(fin())).picks.size(), std::size_t{1});
    }

    void theValueIsTheSumOfWhatTheOffersShow()
    {
        const Shelf shelf = alike({"a", "b", "c", "d", "e"});
        Question question = questionFor(fin());
        question.kite = checkin::Kite::Clouds;
        question.records[{"b"}] = knownFriend();
        question.records[{"c"}] = playedOnce();
        const MenuDraft draft = draftMenu(shelf.candidates(), question);
        int sum = 0;
        for (const Pick &pick : draft.picks)
            sum += pick.facts.worth.total() + pick.facts.coverage + pick.facts.roleBonus;
        QCOMPARE(draft.value, sum);
        QVERIFY(draft.value > 0);
    }
};

QTEST_APPLESS_MAIN(TestChooseMenu)
#include "tst_choose_menu.moc"
