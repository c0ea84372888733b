#include <QtTest>

#include "core/rotation/filters.h"
#include "tests/core/rotation/menu_samples.h"

#include <algorithm>

using namespace lidlark;
using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;
using catalogue::Activity;
using catalogue::Tag;

Q_DECLARE_METATYPE(lidlark::rotation::Filters)
Q_DECLARE_METATYPE(lidlark::rotation::samples::Shelf::Change)

namespace {

Filters with(bool Filters::*word)
{
    Filters filters;
    filters.*word = true;
    return filters;
}

bool stays(const Shelf::Change &change, const Filters &filters)
{
    Shelf shelf;
    shelf.add("one", change);
    return staysWith(shelf.candidates().front(), filters);
}

} // namespace

class TestFilters : public QObject
{
    Q_OBJECT

private slots:
    // Source: job.md F6; what "nothing shared" leaves out: safety.md HY-02 and HY-03.
    void aLifeWordLeavesOut_data()
    {
        QTest::addColumn<Filters>("filters");
        QTest::addColumn<Shelf::Change>("change");
        QTest::addColumn<bool>("stay");
        const auto row = [](const char *name, bool Filters::*word, const Shelf::Change &change,
                            bool stay) { QTest::newRow(name) << with(word) << change << stay; };
        row(
            "no table: on a mat", &Filters::noTable, [](Activity &) {}, true);
        row(
            "no table: at a table", &Filters::noTable,
            [](Activity &a) { a.space = catalogue::Space::Table; }, false);
        row(
            "no mess: something to wipe", &Filters::noMess, [](Activity &a) { a.mess = 1; }, false);
        row(
            "quiet: ordinary sound", &Filters::quiet,
            [](Activity &a) { a.sound = catalogue::Sound::Ordinary; }, false);
        row(
            "quiet: quiet, but with the noise caution", &Filters::quiet,
            [](Activity &a) { a.cautions.add(Tag::Noise); }, false);
        row(
            "quiet: quiet", &Filters::quiet, [](Activity &) {}, true);
        row(
            "one hand: needs two", &Filters::oneHand, [](Activity &a) { a.hands = 2; }, false);
        row(
            "one hand: needs none", &Filters::oneHand, [](Activity &a) { a.hands = 0; }, true);
        row(
            "tired adult: high energy", &Filters::tiredAdult,
            [](Activity &a) { a.energy = catalogue::Energy::High; }, false);
        row(
            "tired adult: two minutes out and back", &Filters::tiredAdult,
            [](Activity &a) {
                a.minutes = {1, 8, 1};
            },
            true);
        row(
            "tired adult: three minutes out and back", &Filters::tiredAdult,
            [](Activity &a) {
                a.minutes = {1, 5, 2};
            },
            false);
        row(
            "away: needs nothing", &Filters::awayFromHome, [](Activity &) {}, true);
        row(
            "away: needs the box", &Filters::awayFromHome,
            [](Activity &a) { a.items = {boxUse("pegs", 6)}; }, false);
        row(
            "away: needs a tray from home", &Filters::awayFromHome,
            [](Activity &a) { a.noBox = false; }, false);
        row(
            "ill: mouth and breath skill", &Filters::someoneIsIll,
            [](Activity &a) { a.skillsAlso = {catalogue::Skill::Orl}; }, false);
        row(
            "ill: pegs", &Filters::someoneIsIll, [](Activity &a) { a.items = {boxUse("pegs", 6)}; },
            true);
    }
    void aLifeWordLeavesOut()
    {
        QFETCH(Filters, filters);
        QFETCH(Shelf::Change, change);
        QTEST(stays(change, filters), "stay");
        QVERIFY(stays(change, Filters{}));
    }

    void illnessLeavesOutWhatGoesToMouthsOrIsShared()
    {
        const catalogue::TagSet out{Tag::Breath, Tag::Straw, Tag::Dough, Tag::Water, Tag::Foam};
        for (std::size_t i = 0; i < catalogue::tagCount; ++i) {
            const auto tag = static_cast<Tag>(i);
            const bool stay =
                stays([&](Activity &a) { a.cautions.add(tag); }, with(&Filters::someoneIsIll));
            QVERIFY2(stay != out.has(tag), catalogue::tagNames.of(tag).data());
        }
    }

    void theFormCountsAndNotTheEntry()
    {
        // A swap took the noise away: the caution of the form decides.
        Shelf shelf;
        shelf.add("swapped", [](Activity &a) { a.cautions.add(Tag::Dough); });
        Candidate candidate = shelf.candidates().front();
        candidate.cautions.remove(Tag::Dough);
        QVERIFY(staysWith(candidate, with(&Filters::someoneIsIll)));
    }

    void lifeWordsCombine()
    {
        Filters both = with(&Filters::noTable);
        both.quiet = true;
        const auto loudMat = [](Activity &a) { a.sound = catalogue::Sound::Loud; };
        const auto quietTable = [](Activity &a) { a.space = catalogue::Space::Table; };
        QVERIFY(!stays(loudMat, both));
        QVERIFY(!stays(quietTable, both));
        QVERIFY(stays([](Activity &) {}, both));
    }

    // Source: job.md scenario 9: only no-box entries, quiet first.
    void awayFromHomeQuietEntriesComeFirst()
    {
        Shelf shelf;
        const auto family = [](Activity &a, int number) {
            a.skillsMain = {static_cast<catalogue::Skill>(number)};
        };
        for (int i = 0; i < 3; ++i)
            shelf.add("quiet" + std::to_string(i), [&](Activity &a) { family(a, i); });
        shelf.add("drum", [&](Activity &a) {
            family(a, 4);
            a.sound = catalogue::Sound::Ordinary;
        });
        Question question = questionFor(fin());
        question.filters.awayFromHome = true;
        question.records[{"drum"}] = knownFriend();
        question.records[{"drum"}].daysSinceOffered = 100;
        const auto candidates = shelf.candidates();
        const auto three = idsOf(draftMenu(candidates, question), candidates);
        QCOMPARE(std::ranges::count(three, "drum"), 0);

        question.without = {{"quiet0"}};
        const auto filled = idsOf(draftMenu(candidates, question), candidates);
        QCOMPARE(filled.size(), std::size_t{3});
        QCOMPARE(filled.back(), std::string("drum"));
    }
};

QTEST_APPLESS_MAIN(TestFilters)
#include "tst_filters.moc"
