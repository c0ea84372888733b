#include <QTest>

#include "core/wording/label_words.h"

#include <algorithm>

using namespace lidlark;
using namespace lidlark::catalogue;
using wording::Region;

/// The words of safety.md section 2, letter by letter. L-1 to L-6: 16 CFR 1500.19(b) as ONIX code
/// list 143 and a marketplace's compliance page reproduce it (CPSC document 282 prints "eight" for
/// "8" in L-2). L-7: the Eurofins page on balloons. "Not suitable for children under three years":
/// UK Toys (Safety) Regulations 2011, schedule 5 part B.
class TestLabelWords : public QObject
{
    Q_OBJECT

private:
    static ItemKind kind(const char *id, TagSet tags, MeasuredHazards hazards = {})
    {
        ItemKind item;
        item.id = {id};
        item.name = id;
        item.tags = tags;
        item.hazards = hazards;
        return item;
    }

    static Catalogue shelf()
    {
        MeasuredHazards ball;
        ball.isSmallBall = true;
        MeasuredHazards marble;
        marble.isMarble = true;
        MeasuredHazards bobble;
        bobble.holdsSmallBall = true;
        return {{kind("ball", {Tag::Small}, ball), kind("balloon", {Tag::Balloon, Tag::Latex}),
                 kind("bobble", {Tag::Small}, bobble), kind("card", {}), kind("coins", {Tag::Coin}),
                 kind("eyes", {Tag::Small}), kind("marble", {Tag::Small}, marble)},
                {},
                {}};
    }

    static QStringList wordsFor(const QStringList &items, Region region, TagSet made = {},
                                TagSet own = {})
    {
        const Catalogue catalogue = shelf();
        Activity activity;
        activity.madeTags = made;
        TagSet cautions = made | own;
        std::vector<ItemUse> uses;
        for (const QString &item : items) {
            ItemUse use;
            use.item = {item.toStdString()};
            cautions = cautions | catalogue.item(use.item)->tags;
            uses.push_back(use);
        }
        QStringList lines;
        for (const auto &line : wording::labelWords(activity, uses, cautions, catalogue, region))
            lines.append(QString::fromStdString(wording::fill(line.words)));
        return lines;
    }

    const QString L1 = "WARNING: CHOKING HAZARD—Small parts. Not for children under 3 yrs.";
    const QString L2 =
        "WARNING: CHOKING HAZARD—Children under 8 yrs. can choke or suffocate on uninflated or "
        "broken balloons. Adult supervision required. Keep uninflated balloons from children. "
        "Discard broken balloons at once.";
    const QString L3 =
        "WARNING: CHOKING HAZARD—This toy is a small ball. Not for children under 3 yrs.";
    const QString L4 =
        "WARNING: CHOKING HAZARD—Toy contains a small ball. Not for children under 3 yrs.";
    const QString L5 =
        "WARNING: CHOKING HAZARD—This toy is a marble. Not for children under 3 yrs.";
    const QString L7 =
        "Warning! Children under eight years can choke or suffocate on uninflated or broken "
        "balloons. Adult supervision required. Keep uninflated balloons from children. Discard "
        "broken balloons at once.";

private slots:
    /// Rows SP-02 and SP-07 (small parts), BA-02 (small balls).
    void eachHazardHasItsOwnWords()
    {
        QCOMPARE(wordsFor({"eyes"}, Region::UnitedStates), QStringList{L1});
        QCOMPARE(wordsFor({"coins"}, Region::UnitedStates), QStringList{L1});
        QCOMPARE(wordsFor({"balloon"}, Region::UnitedStates), QStringList{L2});
        QCOMPARE(wordsFor({"ball"}, Region::UnitedStates), QStringList{L3});
        QCOMPARE(wordsFor({"marble"}, Region::UnitedStates), QStringList{L5});
        QCOMPARE(wordsFor({"balloon"}, Region::Europe), QStringList{L7});
        QCOMPARE(wordsFor({"eyes"}, Region::Europe),
                 QStringList{"Warning! Not suitable for children under three years. Small parts."});
        QVERIFY(wordsFor({"card"}, Region::UnitedStates).isEmpty());
        QVERIFY(wordsFor({"card"}, Region::Europe).isEmpty());
    }

    /// safety.md 2: "balloon words first, then small ball or marble 'is' words, then 'contains'
    /// words, then small parts".
    void theyComeInTheirOrder()
    {
        QCOMPARE(wordsFor({"eyes", "bobble", "marble", "ball", "balloon"}, Region::UnitedStates),
                 (QStringList{L2, L3, L5, L4, L1}));
    }

    /// "an item that 'is' a small ball never also gets the 'contains' words for itself".
    void aBallContainsNoBall()
    {
        QVERIFY(!wordsFor({"ball"}, Region::UnitedStates).contains(L4));
        QVERIFY(!wordsFor({"ball"}, Region::UnitedStates).contains(L1));
        QCOMPARE(wordsFor({"ball", "eyes"}, Region::UnitedStates), (QStringList{L3, L1}));
    }

    void piecesThatAreMadeHaveWordsToo()
    {
        QCOMPARE(wordsFor({"card"}, Region::UnitedStates, {Tag::Small}), QStringList{L1});
        QCOMPARE(wordsFor({"ball"}, Region::UnitedStates, {Tag::Small}), (QStringList{L3, L1}));
        QCOMPARE(wordsFor({"card"}, Region::UnitedStates, {}, {Tag::Balloon}), QStringList{L2});
    }

    /// On paper the same words in the same order, and beside them what they are about.
    void aBoxHasTheWordsOfAllThatIsInIt()
    {
        const std::vector<ItemId> box{{"eyes"}, {"bobble"},  {"card"},
                                      {"ball"}, {"balloon"}, {"nowhere-known"}};
        const auto words = wording::labelWordsOfBox(box, shelf(), Region::UnitedStates);
        QStringList lines;
        for (const auto &word : words)
            lines.append(QString::fromStdString(wording::fill(word.label.words)));
        QCOMPARE(lines, (QStringList{L2, L3, L4, L1}));
        QVERIFY((words[0].items == std::vector<ItemId>{{"balloon"}}));
        QVERIFY((words[3].items == std::vector<ItemId>{{"eyes"}, {"bobble"}}));
        // In Europe a small ball and what contains one share their words.
        const auto european = wording::labelWordsOfBox(box, shelf(), Region::Europe);
        QCOMPARE(european.size(), std::size_t{3});
        QVERIFY((european[1].items == std::vector<ItemId>{{"ball"}, {"bobble"}}));
        QVERIFY(wording::labelWordsOfBox({}, shelf(), Region::Europe).empty());
    }

    void noWordsAreSaidTwice()
    {
        const QStringList words = wordsFor({"bobble", "ball"}, Region::Europe);
        QCOMPARE(words.size(), QSet<QString>(words.begin(), words.end()).size());
    }

    void everyLineNamesItsSource()
    {
        Activity activity;
        for (const Region region : {Region::UnitedStates, Region::Europe}) {
            for (const auto &line :
                 wording::labelWords(activity, {}, {Tag::Balloon, Tag::Small}, shelf(), region))
                QVERIFY(!wording::fill(line.source).empty());
        }
    }

    void thePlaceChoosesTheWords()
    {
        for (const char *place : {"US", "en_US", "es-US", "PR"})
            QVERIFY(wording::regionOf(place) == Region::UnitedStates);
        for (const char *place : {"GB", "en_GB", "PL", "de", "", "US_GB"})
            QVERIFY(wording::regionOf(place) == Region::Europe);
    }
};

QTEST_APPLESS_MAIN(TestLabelWords)
#include "tst_label_words.moc"
