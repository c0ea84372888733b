#include <QtTest>

#include "core/checkin/pair_counts.h"
#include "core/wording/pair_words.h"

using namespace lidlark;
using namespace lidlark::checkin;

namespace {

CheckIn pairOf(const std::string &activity, Kite before, std::optional<Kite> after,
               ShownBy by = ShownBy::Child)
{
    CheckIn pair;
    pair.activity = {activity};
    pair.before = before;
    pair.after = after;
    pair.shownBy = by;
    return pair;
}

const QString honest =
    QStringLiteral("That is a small number, and other things happen in five minutes too.");

QStringList textsOf(const std::vector<wording::Sentence> &sentences)
{
    QStringList texts;
    for (const wording::Sentence &sentence : sentences)
        texts.append(QString::fromStdString(wording::fill(sentence)));
    return texts;
}

} // namespace

/// Source: checkin.md 7, before and after.
class TestPairCounts : public QObject
{
    Q_OBJECT
private slots:
    void aChangeIsWhereTheKiteWent()
    {
        QCOMPARE(changeOf(Kite::Whirling, Kite::Steady), Change::TowardsSteady);
        QCOMPARE(changeOf(Kite::Resting, Kite::Steady), Change::TowardsSteady);
        QCOMPARE(changeOf(Kite::Steady, Kite::Steady), Change::NoChange);
        QCOMPARE(changeOf(Kite::Whirling, Kite::Whirling), Change::NoChange);
        QCOMPARE(changeOf(Kite::Steady, Kite::Resting), Change::AwayFromSteady);
        QCOMPARE(changeOf(Kite::Resting, Kite::Whirling), Change::PastSteady);
    }

    void cloudsAndTheBagTellNoState()
    {
        for (const Kite kite : {Kite::Clouds, Kite::Bag}) {
            QVERIFY(!changeOf(kite, Kite::Steady));
            QVERIFY(!changeOf(Kite::Steady, kite));
        }
    }

    void onlyPairsAreCountedAndAGuessApart()
    {
        const std::vector<CheckIn> checkIns{
            pairOf("slow-oars", Kite::Whirling, Kite::Steady),
            pairOf("slow-oars", Kite::Whirling, std::nullopt),
            pairOf("slow-oars", Kite::Clouds, Kite::Steady),
            pairOf("slow-oars", Kite::Resting, Kite::Whirling),
            pairOf("slow-oars", Kite::Steady, Kite::Steady, ShownBy::AdultGuess),
            pairOf("peg-rope", Kite::Steady, Kite::Resting)};
        const auto told = pairsByActivity(checkIns, ShownBy::Child);
        QCOMPARE(told.size(), std::size_t{2});
        QCOMPARE(told.at({"slow-oars"}), (PairCounts{1, 0, 0, 1, 1}));
        QCOMPARE(told.at({"peg-rope"}), (PairCounts{0, 0, 1, 0, 0}));
        const auto guessed = pairsByActivity(checkIns, ShownBy::AdultGuess);
        QCOMPARE(guessed.at({"slow-oars"}), (PairCounts{0, 1, 0, 0, 0}));
    }

    // Source: checkin.md 13, check 7.
    void withFivePairsNothingIsSaidAndWithSixCountsAre()
    {
        QVERIFY(wording::pairSummary({3, 1, 1, 0, 0}, ShownBy::Child, "Oona").empty());
        QCOMPARE(textsOf(wording::pairSummary({3, 2, 1, 0, 0}, ShownBy::Child, "Oona")),
                 (QStringList{"6 times Oona told us both.", "Towards steady: 3.", "No change: 2.",
                              "Away from steady: 1.", honest}));
    }

    void whatWentPastSteadyIsNamedWhereThereIsAny()
    {
        const QStringList lines =
            textsOf(wording::pairSummary({3, 2, 1, 1, 1}, ShownBy::AdultGuess, "Oona"));
        QCOMPARE(lines.front(), QStringLiteral("7 times an adult guessed both."));
        QVERIFY(lines.contains(QStringLiteral("Past steady to the other side: 1.")));
    }

    // Source: checkin.md 7, "the words 'improved', 'worse', 'better' do not appear"; no shares.
    void noWordJudgesAndNothingIsAShare()
    {
        const QString all =
            textsOf(wording::pairSummary({9, 8, 7, 6, 5}, ShownBy::Child, "Oona")).join(u' ');
        for (const char *word : {"improve", "worse", "better", "%", "average", "good", "bad"})
            QVERIFY2(!all.contains(QLatin1String(word), Qt::CaseInsensitive), word);
    }
};

QTEST_APPLESS_MAIN(TestPairCounts)
#include "tst_pair_counts.moc"
