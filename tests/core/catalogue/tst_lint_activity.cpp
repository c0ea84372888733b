#include <QTest>

#include "lint_samples.h"

#include <functional>

using namespace lidlark;
using namespace lidlark::catalogue;

// Each rule of the authoring checklist (activities.md section 6): one sound entry, one thing
// changed, one finding at the right place.

namespace {

using samples::findingsOf;
using samples::soundEntry;
using Change = std::function<void(Activity &)>;

std::string words(int count)
{
    return samples::words(count).toStdString();
}

struct Case {
    const char *name;
    const char *findings; ///< Rule and field; empty: none.
    Change change;
};

const std::vector<Case> &reading()
{
    static const std::vector<Case> cases{
        {"a sentence of 20 words", "",
         [](Activity &a) { a.steps[0].text = words(20) + ". Sit down."; }},
        {"a sentence of 21 words", "reading steps[1].text",
         [](Activity &a) { a.steps[0].text = words(21) + ". Sit down."; }},
        {"talk has sentences too", "reading say[1]",
         [](Activity &a) { a.say[0] = words(21) + "."; }},
        {"what a picture shows may be longer", "",
         [](Activity &a) { a.picture.alt = words(21) + "."; }},
        {"a step of 40 words", "",
         [](Activity &a) { a.steps[0].text = words(20) + ". A " + words(19) + "."; }},
        {"a step of 41 words", "reading steps[1].text",
         [](Activity &a) { a.steps[0].text = words(20) + ". A " + words(19) + ". Now."; }},
        {"hard words", "reading steps", [](Activity &a) {
             for (Step &step : a.steps)
                 step.text = "Consolidate bilateral coordination systematically, incorporating "
                             "proprioceptive components throughout.";
         }}};
    return cases;
}

const std::vector<Case> &home()
{
    static const std::vector<Case> cases{
        {"a kind that comes home is not used up", "home items[1].fate",
         [](Activity &a) { a.items[0].fate = Fate::UsedUp, a.items[0].countBack = 0; }},
        {"what is cut up may be used up", "",
         [](Activity &a) {
             a.items[0].fate = Fate::UsedUp;
             a.items[0].countBack = 0;
             a.makes.emplace();
             a.makes->push_back({"halves", {"beads"}, std::nullopt});
         }},
        {"five of six are counted", "home items[1].count_back",
         [](Activity &a) { a.items[0].countBack = 5, a.putBack[0] = "Five beads: count them"; }},
        {"no number is said", "home put_back", [](Activity &a) { a.putBack[0] = "Beads back"; }},
        {"a figure counts as a number", "", [](Activity &a) { a.putBack[0] = "6 beads: count"; }},
        {"16 is not 6", "home put_back", [](Activity &a) { a.putBack[0] = "16 beads: count"; }},
        {"the lid is not last", "home put_back",
         [](Activity &a) {
             a.items.clear(), a.putBack = {"Lid on", "Hands washed"};
         }},
        {"no box, no lid", "",
         [](Activity &a) { a.items.clear(), a.noBox = true, a.putBack = {"Nothing"}; }}};
    return cases;
}

const std::vector<Case> &floorAndWays()
{
    static const std::vector<Case> cases{
        {"coins within reach only", "floor supervision",
         [](Activity &a) { a.supervision = Supervision::Reach, a.cautions.add(Tag::Coin); }},
        {"small parts within reach", "", [](Activity &a) { a.supervision = Supervision::Reach; }},
        {"scissors under six years", "floor supervision",
         [](Activity &a) { a.supervision = Supervision::Near, a.cautions.add(Tag::Sharp); }},
        {"scissors from six years", "",
         [](Activity &a) {
             a.supervision = Supervision::Near;
             a.cautions.add(Tag::Sharp);
             a.ageFloorMonths = 72;
         }},
        {"easier says nothing", "gradings easier[1].text",
         [](Activity &a) { a.easier[0].text = "Larger pot"; }},
        {"easier is harder", "gradings harder[1].text",
         [](Activity &a) { a.harder[0].text = "A LARGER pot stands close"; }},
        {"no seated way", "ways ways_in.seated", [](Activity &a) { a.waysIn.seated.clear(); }},
        {"a one-handed way that only claims", "ways ways_in.one_hand",
         [](Activity &a) { a.waysIn.oneHand = "Works with one hand."; }}};
    return cases;
}

const std::vector<Case> &claimsAndTalk()
{
    static const std::vector<Case> cases{
        {"a promise", "claims adult_line",
         [](Activity &a) { a.adultLine = "This improves their grip."; }},
        {"a promise of calm", "claims put_back[1]",
         [](Activity &a) { a.putBack[0] = "Six beads: counting calms"; }},
        {"will help", "claims steps[2].text",
         [](Activity &a) { a.steps[1].text = "It will help with buttons."; }},
        {"a treat is none", "", [](Activity &a) { a.steps[1].text = "Post a treat."; }},
        {"treatment is one", "claims steps[2].text",
         [](Activity &a) { a.steps[1].text = "The treatment goes on."; }},
        {"a therapist may be asked", "",
         [](Activity &a) { a.watchFor[0] = "Ask your therapist first."; }},
        {"therapy may not", "claims watch_for[1]",
         [](Activity &a) { a.watchFor[0] = "Therapy at home."; }},
        {"speech without mouth play", "",
         [](Activity &a) { a.steps[1].text = "No speech is needed."; }},
        {"speech in mouth play", "claims steps[2].text",
         [](Activity &a) {
             a.skillsMain = {Skill::Orl};
             a.steps[1].text = "Good for speech.";
         }},
        {"praise for obeying", "talk say[1]", [](Activity &a) { a.say[0] = "Good girl."; }},
        {"please", "talk say[1]", [](Activity &a) { a.say[0] = "Another one, please."; }},
        {"a clever trick in a step is no praise", "",
         [](Activity &a) { a.steps[1].text = "A clever fold."; }},
        {"shouting", "talk invite", [](Activity &a) { a.invite = "Will it fit!"; }},
        {"a colour in a step", "colour steps[2].text",
         [](Activity &a) { a.steps[1].text = "Post the red one."; }},
        {"tired is not red", "", [](Activity &a) { a.steps[1].text = "Tired? Scattered beads."; }},
        {"dark and pale are light, not colour", "",
         [](Activity &a) { a.steps[1].text = "Post the dark one."; }}};
    return cases;
}

const std::vector<Case> &drawings()
{
    static const std::vector<Case> cases{
        {"two steps without a drawing", "drawings steps",
         [](Activity &a) { a.steps[1].picture.reset(); }},
        {"no step left for the main picture", "drawings steps",
         [](Activity &a) {
             a.steps[0].picture = {"scene-pebble-post-1", "A pot."};
         }},
        {"another step's drawing", "drawings steps[2].drawing",
         [](Activity &a) { a.steps[1].picture->drawing = "scene-pebble-post-1"; }},
        {"another entry's main picture", "drawings picture.drawing",
         [](Activity &a) { a.picture.drawing = "scene-slow-oars"; }}};
    return cases;
}

} // namespace

class TestLintActivity : public QObject
{
    Q_OBJECT

private slots:
    void aSoundEntryHasNoFindings();
    void oneChangeIsOneFinding_data();
    void oneChangeIsOneFinding();
    void onlyPeopleCanAnswerTheRest();
};

void TestLintActivity::aSoundEntryHasNoFindings()
{
    QCOMPARE(samples::shownFindings(findingsOf(soundEntry())), QString());
}

void TestLintActivity::oneChangeIsOneFinding_data()
{
    QTest::addColumn<int>("group");
    QTest::addColumn<int>("index");
    const std::array groups{&reading(), &home(), &floorAndWays(), &claimsAndTalk(), &drawings()};
    for (std::size_t group = 0; group < groups.size(); ++group) {
        for (std::size_t i = 0; i < groups[group]->size(); ++i)
            QTest::newRow((*groups[group])[i].name)
                << static_cast<int>(group) << static_cast<int>(i);
    }
}

void TestLintActivity::oneChangeIsOneFinding()
{
    QFETCH(int, group);
    QFETCH(int, index);
    const std::array groups{&reading(), &home(), &floorAndWays(), &claimsAndTalk(), &drawings()};
    const Case &story = (*groups[static_cast<std::size_t>(group)])[static_cast<std::size_t>(index)];
    Activity activity = soundEntry();
    story.change(activity);
    const std::vector<LintFinding> findings = findingsOf(activity);
    QCOMPARE(samples::shownFindings(findings), QString(story.findings));
    for (const LintFinding &finding : findings)
        QVERIFY(!finding.problem.empty() && !finding.remedy.empty());
}

/// activities.md section 6: 1, 2, 9 and 10 are nobody's but a person's; of 5 a program sees half.
void TestLintActivity::onlyPeopleCanAnswerTheRest()
{
    QList<int> numbers;
    for (const HumanQuestion &question : questionsForPeople(soundEntry())) {
        numbers << question.number;
        QVERIFY(question.text.ends_with('?') || question.number == 5);
    }
    QCOMPARE(numbers, (QList<int>{1, 2, 5, 9, 10}));
    const std::string five = questionsForPeople(soundEntry())[2].text;
    QVERIFY2(five.find("36 months") != std::string::npos, five.c_str());
    QVERIFY2(five.find("beads, towel") != std::string::npos, five.c_str());
    QVERIFY2(five.find("SMALL") != std::string::npos, five.c_str());
}

QTEST_APPLESS_MAIN(TestLintActivity)
#include "tst_lint_activity.moc"
