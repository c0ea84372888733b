#include <QTest>

#include "core/catalogue/measured_hazards.h"
#include "core/wording/measure_words.h"

#include <set>

using namespace lidlark;
using namespace lidlark::catalogue;

/// Tags that come from measures alone. The limits are those of the regulations named beside each
/// check; objects.csv itself is judged in tests/core/measure.
class TestMeasuredHazards : public QObject
{
    Q_OBJECT

private slots:
    void aSmallWholeIsSmall();
    void whatWearsDownIsJudgedAtItsLeast();
    void aPartThatComesOffIsJudgedAlone();
    void aBallIsJudgedByTheHole();
    void aMarbleIsSmallWhateverItsSize();
    void aCordIsJudgedByLengthLoopAndThickness();
    void aSuctionCupIsKeptFromTheSmall();
    void aStiffHollowSeals();
    void whatIsSoftHasNoTagOfSize();
    void everyReasonHasWordsToTranslate();
    void measuresAreSaidInWords();

private:
    static measure::Solid solid(const char *shape, const std::vector<double> &mm)
    {
        return *measure::solidFrom(shape, mm);
    }
    static Measures whole(const char *shape, const std::vector<double> &mm)
    {
        Measures measures;
        measures.whole = solid(shape, mm);
        return measures;
    }
};

void TestMeasuredHazards::aSmallWholeIsSmall()
{
    // objects.csv (read): a US quarter fits; a 40 mm stick-on eye does not.
    QCOMPARE(hazardsOf(whole("disc", {24.26, 1.75})).tags, TagSet{Tag::Small});
    QVERIFY(hazardsOf(whole("disc", {40, 7})).tags.empty());
    // safety.md 0: a sphere fits up to 31.75 mm; a cube up to 22.45, so an inch cube does not.
    QVERIFY(hazardsOf(whole("sphere", {31.75})).tags.has(Tag::Small));
    QVERIFY(!hazardsOf(whole("sphere", {32.2})).tags.has(Tag::Small));
    QVERIFY(!hazardsOf(whole("box", {25.4, 25.4, 25.4})).tags.has(Tag::Small));
}

void TestMeasuredHazards::whatWearsDownIsJudgedAtItsLeast()
{
    Measures crayon = whole("cylinder", {12, 70});
    QVERIFY(hazardsOf(crayon).tags.empty());
    // safety.md 0, table: of 12 mm diameter at most 46.1 mm fit.
    crayon.least = solid("cylinder", {12, 45});
    QCOMPARE(hazardsOf(crayon).tags, TagSet{Tag::Small});
    crayon.least = solid("cylinder", {12, 66});
    QVERIFY(hazardsOf(crayon).tags.empty());
}

void TestMeasuredHazards::aPartThatComesOffIsJudgedAlone()
{
    // activities.md 1.3: "a spring peg comes apart by hand; the spring fits the cylinder".
    Measures peg = whole("box", {72, 12, 10});
    QVERIFY(hazardsOf(peg).tags.empty());
    peg.comesOff.push_back({"spring", solid("box", {25, 14, 8})});
    QCOMPARE(hazardsOf(peg).tags, TagSet{Tag::Small});
    QCOMPARE(measuredTags(peg).at(0).because,
             std::string("its spring fits the small parts cylinder"));
}

void TestMeasuredHazards::aBallIsJudgedByTheHole()
{
    // 16 CFR 1500.19(a)(1): 1.75 in = 44.45 mm; ISO and EN gauge 44.5 mm (safety.md BA-03).
    Measures ball = whole("sphere", {40});
    QVERIFY(!hazardsOf(ball).tags.has(Tag::Small));
    ball.rollsAs = RollsAs::Ball;
    QVERIFY(hazardsOf(ball).isSmallBall);
    QCOMPARE(hazardsOf(ball).tags, TagSet{Tag::Small});
    ball.whole = solid("sphere", {44.5});
    QVERIFY(hazardsOf(ball).isSmallBall);
    ball.whole = solid("sphere", {45});
    QVERIFY(!hazardsOf(ball).isSmallBall);
    // BA-04: dice are not balls; only the cylinder counts.
    QVERIFY(!hazardsOf(whole("box", {40, 40, 40})).tags.has(Tag::Small));
    // BA-01 and L-4: a small ball that comes off something larger.
    Measures toy = whole("box", {100, 100, 100});
    toy.comesOff.push_back({"bobble", solid("sphere", {40})});
    QVERIFY(hazardsOf(toy).holdsSmallBall);
    QCOMPARE(hazardsOf(toy).tags, TagSet{Tag::Small});
    // Rolled or pressed while playing: safety.md FO-01.
    QVERIFY(isSmall(solid("sphere", {44})));
    QVERIFY(!isSmall(solid("sphere", {45})));
    QVERIFY(!isSmall(solid("ellipsoid", {57, 43, 43})));
}

void TestMeasuredHazards::aMarbleIsSmallWhateverItsSize()
{
    Measures marble = whole("sphere", {50}); // safety.md BA-05
    marble.rollsAs = RollsAs::Marble;
    QVERIFY(hazardsOf(marble).isMarble);
    QCOMPARE(hazardsOf(marble).tags, TagSet{Tag::Small});
}

void TestMeasuredHazards::aCordIsJudgedByLengthLoopAndThickness()
{
    // CO-01, CO-02, CO-05: EN 71-1:2005+A8:2009 5.4 (read): 220 mm, 1.5 mm. 360 mm is the stricter
    // figure of safety.md 0.
    const auto cord = [](measure::Cord of) {
        Measures measures;
        measures.soft = "a cord";
        measures.cord = of;
        return hazardsOf(measures).tags.has(Tag::Cord);
    };
    QVERIFY(!cord({220, 1.5, 360}));
    QVERIFY(cord({221, 1.5, 0}));
    QVERIFY(cord({100, 1.4, 0}));
    QVERIFY(cord({100, 3, 361}));
}

void TestMeasuredHazards::aSuctionCupIsKeptFromTheSmall()
{
    Measures hook = whole("box", {100, 60, 60}); // safety.md SU-01
    hook.comesOff.push_back({"cup", solid("disc", {50, 20}), true});
    QCOMPARE(hazardsOf(hook).tags, TagSet{Tag::Small});
}

void TestMeasuredHazards::aStiffHollowSeals()
{
    // ISO 8124-1:2022 4.5.8 (clause read, figures from memory): 64 to 102 mm across, over 13 deep.
    const auto seals = [](measure::Hollow hollow) { return measure::maySealAFace(hollow); };
    QVERIFY(seals({75, 75, 90, true}));
    QVERIFY(!seals({75, 75, 90, false}));
    QVERIFY(seals({64, 64, 14, true}));
    QVERIFY(!seals({63.9, 63.9, 90, true}));
    QVERIFY(seals({102, 102, 14, true}));
    QVERIFY(!seals({103, 103, 14, true}));
    QVERIFY(seals({140, 90, 14, true}));
    QVERIFY(!seals({75, 75, 13, true}));
    Measures cup = whole("cylinder", {80, 90});
    cup.hollow = measure::Hollow{75, 75, 88, true};
    QVERIFY(hazardsOf(cup).sealsAFace);
    QVERIFY(hazardsOf(cup).tags.empty());
}

void TestMeasuredHazards::whatIsSoftHasNoTagOfSize()
{
    Measures foam; // safety.md 6: an uncompressed size of a soft thing has no meaning.
    foam.soft = "a heap of foam";
    QCOMPARE(hazardsOf(foam), MeasuredHazards{});
}

/// One measure for each reason there is: a part, a cord and a hollow of every kind.
void TestMeasuredHazards::everyReasonHasWordsToTranslate()
{
    Measures all = whole("sphere", {30});
    all.least = solid("sphere", {20});
    all.rollsAs = RollsAs::Ball;
    all.comesOff = {{"bead", solid("sphere", {10}), false},
                    {"knob", solid("sphere", {40}), false},
                    {"cup", solid("sphere", {60}), true}};
    all.cord = measure::Cord{221, 1, 361};
    Measures marble = whole("sphere", {50});
    marble.rollsAs = RollsAs::Marble;
    std::set<std::string> said;
    for (const Measures &measures : {all, marble}) {
        for (const wording::Sentence &sentence : wording::measuredWords(measures)) {
            QVERIFY2(std::holds_alternative<wording::Sentence>(sentence.arguments.at(0).content),
                     wording::fill(sentence).c_str());
            said.insert(wording::fill(sentence));
        }
    }
    QCOMPARE(said.size(), 10U);
    QVERIFY(said.contains("By its measures: its bead fits the small parts cylinder."));
    QVERIFY(wording::measuredWords(whole("disc", {40, 7})).empty());
}

void TestMeasuredHazards::measuresAreSaidInWords()
{
    const auto words = [](const Measures &measures) {
        QStringList lines;
        for (const wording::Sentence &sentence : wording::measureWords(measures))
            lines.append(QString::fromStdString(wording::fill(sentence)));
        return lines;
    };
    QCOMPARE(words(whole("disc", {15, 5})), QStringList("Disc: 15 mm across, 5 mm thick."));
    QCOMPARE(words(whole("box", {31.8, 15.8, 11.4})),
             QStringList("Block: 31.8 by 15.8 by 11.4 mm."));
    Measures peg = whole("cylinder", {12, 70});
    peg.least = solid("cylinder", {12, 66});
    peg.comesOff = {{"spring", solid("ellipsoid", {9, 8, 7}), false}};
    QCOMPARE(words(peg), QStringList({"Rod: 12 mm across, 70 mm long.",
                                      "Worn down, at least:", "Rod: 12 mm across, 66 mm long.",
                                      "Comes off: spring.", "Egg shape: 9 by 8 by 7 mm."}));
    Measures lace;
    lace.soft = "A lace lies in any shape.";
    lace.cord = measure::Cord{900, 4, 0};
    QCOMPARE(words(lace), QStringList({"Soft: it has no size that means anything.",
                                       "Cord: 900 mm long, 4 mm thick."}));
}

QTEST_APPLESS_MAIN(TestMeasuredHazards)
#include "tst_measured_hazards.moc"
