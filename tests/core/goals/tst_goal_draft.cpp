#include <QtTest>

#include "core/goals/goal_draft.h"
#include "core/goals/level_words.h"

using namespace lidlark;
using namespace lidlark::goals;

namespace {

/// Fin's goal. Source: job.md 4, levels as agreed on 4 January, review on 29 March 2027.
GoalDraft lunchTub()
{
    GoalDraft draft;
    draft.words = "Opens his lunch tub at school";
    draft.shortWords = "opening his lunch tub";
    draft.levels = {
        "An adult opens it.", "Holds it steady with his left forearm. An adult lifts the lid.",
        "Holds it and lifts the lid with his right hand, after one reminder.",
        "Without a reminder, in the noise of the hall.", "Opens it and a friend's different tub."};
    draft.baseline = -1;
    draft.agreedOn = dayFrom({2027, 1, 4});
    draft.reviewOn = dayFrom({2027, 3, 29});
    return draft;
}

DraftFinding at(int level, DraftMatter matter, int other = 0, std::string word = {})
{
    return {DraftField::Level, matter, level, other, std::move(word)};
}

DraftFinding of(DraftField field, DraftMatter matter)
{
    return {field, matter, 0, 0, {}};
}

} // namespace

Q_DECLARE_METATYPE(GoalDraft)
Q_DECLARE_METATYPE(DraftFinding)

/// Guards job.md T10 while a goal is written: what refuses names its field, what a machine cannot
/// judge is only said.
class TestGoalDraft : public QObject
{
    Q_OBJECT

private slots:
    void aGoalOfTheIslandHasNothingToBeSaidOf()
    {
        QCOMPARE(findingsOf(lunchTub()), std::vector<DraftFinding>());
    }

    void whatRefusesNamesItsField_data()
    {
        QTest::addColumn<GoalDraft>("draft");
        QTest::addColumn<DraftFinding>("finding");
        const auto row = [](const char *name, void (*spoil)(GoalDraft &), DraftFinding finding) {
            GoalDraft draft = lunchTub();
            spoil(draft);
            QTest::newRow(name) << draft << finding;
        };
        row(
            "no words", [](GoalDraft &d) { d.words = "  "; },
            of(DraftField::Words, DraftMatter::Missing));
        row(
            "a level of white space", [](GoalDraft &d) { d.levels[4] = " \t"; },
            at(2, DraftMatter::Missing));
        row(
            "a level of a full stop", [](GoalDraft &d) { d.levels[3] = "."; },
            at(1, DraftMatter::Missing));
        row(
            "levels that repeat", [](GoalDraft &d) { d.levels[3] = d.levels[2]; },
            at(1, DraftMatter::SameAs, 0));
        row(
            "that differ in capitals and spaces",
            [](GoalDraft &d) { d.levels[1] = " an  ADULT opens it "; },
            at(-1, DraftMatter::SameAs, -2));
        row(
            "no baseline", [](GoalDraft &d) { d.baseline.reset(); },
            of(DraftField::Baseline, DraftMatter::Missing));
        row(
            "a baseline of 3", [](GoalDraft &d) { d.baseline = 3; },
            of(DraftField::Baseline, DraftMatter::BeyondTheLevels));
        row(
            "no review", [](GoalDraft &d) { d.reviewOn.reset(); },
            of(DraftField::ReviewOn, DraftMatter::Missing));
        row(
            "a review on the day it was agreed", [](GoalDraft &d) { d.reviewOn = d.agreedOn; },
            of(DraftField::ReviewOn, DraftMatter::NotAfterAgreed));
        row(
            "a review before it", [](GoalDraft &d) { d.reviewOn = *d.agreedOn - 1; },
            of(DraftField::ReviewOn, DraftMatter::NotAfterAgreed));
        row(
            "bytes that are no text", [](GoalDraft &d) { d.levels[0] = "opens \xff it now"; },
            at(-2, DraftMatter::NotPlain));
        row(
            "two lines", [](GoalDraft &d) { d.words = "opens\nit"; },
            of(DraftField::Words, DraftMatter::NotPlain));
        row(
            "too long", [](GoalDraft &d) { d.levels[2] = std::string(201, 'a'); },
            at(0, DraftMatter::TooLong));
        row(
            "too long in short", [](GoalDraft &d) { d.shortWords = std::string(121, 'a'); },
            of(DraftField::ShortWords, DraftMatter::TooLong));
    }
    void whatRefusesNamesItsField()
    {
        QFETCH(GoalDraft, draft);
        QFETCH(DraftFinding, finding);
        QCOMPARE(findingsOf(draft), std::vector{finding});
        QCOMPARE(firstRefusal(findingsOf(draft)), std::optional(finding));
    }

    /// Common practice, no source: a level says what somebody does, where everybody can see it.
    void whatAMachineCannotJudgeIsOnlySaid()
    {
        GoalDraft draft = lunchTub();
        draft.levels[4] = "Feels confident with every tub.";
        draft.levels[0] = "Never.";
        QCOMPARE(findingsOf(draft), (std::vector{at(-2, DraftMatter::SaysLittle),
                                                 at(2, DraftMatter::ReadsAsFeeling, 0, "Feels")}));
        QVERIFY(!firstRefusal(findingsOf(draft)));
    }

    void allThatIsWrongIsSaidAtOnceInTheOrderOfTheFields()
    {
        const std::vector<DraftFinding> findings = findingsOf(GoalDraft{});
        QCOMPARE(findings.size(), std::size_t{8});
        QCOMPARE(findings.front(), of(DraftField::Words, DraftMatter::Missing));
        QCOMPARE(findings[1], at(-2, DraftMatter::Missing));
        QCOMPARE(findings.back(), of(DraftField::ReviewOn, DraftMatter::Missing));
    }

    void lettersAreCountedNotBytes()
    {
        GoalDraft draft = lunchTub();
        draft.levels[2].clear();
        for (int i = 0; i < 100; ++i)
            draft.levels[2] += "ł ";
        QVERIFY(!firstRefusal(findingsOf(draft)));
    }

    void aWordOfFeelingIsFoundWholeAndWhereverItStands()
    {
        QCOMPARE(wordOfFeeling("Opens it, \"Better\" than before"), std::string("Better"));
        QVERIFY(!wordOfFeeling("Goes to the wellhead and fills the jug"));
        QVERIFY(!wordOfFeeling(""));
        QCOMPARE(countOfWords("- opens , it"), 2);
    }
};

QTEST_APPLESS_MAIN(TestGoalDraft)
#include "tst_goal_draft.moc"
