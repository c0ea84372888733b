#include <QtTest>

#include "core/rotation/kite_roles.h"
#include "core/rotation/kite_rules.h"
#include "tests/core/rotation/random_shelf.h"

#include <rapidcheck.h>

using namespace lidlark;
using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;
using catalogue::Activity;
using catalogue::Effect;
using catalogue::Energy;
using catalogue::Skill;
using catalogue::Space;
using catalogue::Tag;
using catalogue::Words;
using checkin::Kite;

Q_DECLARE_METATYPE(lidlark::rotation::samples::Shelf::Change)
Q_DECLARE_METATYPE(lidlark::checkin::Kite)
Q_DECLARE_METATYPE(lidlark::rotation::KitePlace)

namespace {

const child::Child &mairead()
{
    static const child::Child child{{"mairead"}, "Mairead", std::nullopt, true, {}};
    return child;
}

Question questionWith(const child::Child &child, Kite kite)
{
    Question question = questionFor(child);
    question.part = PartOfDay::Evening;
    question.kite = kite;
    for (int i = 0; i < 4; ++i)
        question.stock[{"item" + std::to_string(i)}] = 12;
    return question;
}

/// The offers of a random shelf for this question.
template <class Check>
void forEachOffer(const child::Child &child, Kite kite, bool late, const Check &check)
{
    RandomShelf random(*rc::gen::inRange(3, 40), *rc::gen::arbitrary<unsigned>());
    Question question = questionWith(child, kite);
    question.pastBedtimeHour = late;
    question.records = random.records();
    const auto candidates = random.shelf().candidates();
    for (const Pick &pick : draftMenu(candidates, question).picks)
        check(candidates[pick.candidate], question);
}

/// An entry that would be offered before all others, were it not for the kite.
std::vector<std::string> offeredBeside(const Shelf::Change &change, const Question &base)
{
    Shelf shelf;
    for (int i = 0; i < 3; ++i)
        shelf.add("plain" + std::to_string(i),
                  [&](Activity &a) { a.skillsMain = {static_cast<Skill>(i)}; });
    shelf.add("tempting", [&](Activity &a) {
        a.skillsMain = {Skill::Att};
        change(a);
    });
    Question question = base;
    question.stock[{"pieces"}] = 12;
    for (int i = 0; i < 3; ++i)
        question.records.try_emplace({"plain" + std::to_string(i)}, knownFriend());
    question.records.try_emplace({"tempting"}, knownFriend());
    question.records[{"tempting"}].daysSinceOffered = 200;
    const auto candidates = shelf.candidates();
    return idsOf(draftMenu(candidates, question), candidates);
}

bool isTemptingOffered(const Shelf::Change &change, const Question &question)
{
    return std::ranges::count(offeredBeside(change, question), "tempting") > 0;
}

} // namespace

class TestKiteRules : public QObject
{
    Q_OBJECT

private slots:
    // Source: checkin.md 13, acceptance check 5: a whirling tap at 19:10. FOAM: checkin.md 4.
    void whirlingInTheEveningOffersNothingThatWakesCutsSnapsOrIsSucked()
    {
        const bool holds = rc::check("none alerting, sharp, elastic, straw, foam or coin", [] {
            forEachOffer(fin(), Kite::Whirling, true, [](const Candidate &offer, const Question &) {
                RC_ASSERT(offer.activity->effect != Effect::Alerting);
                for (const Tag tag : {Tag::Sharp, Tag::Elastic, Tag::Straw, Tag::Foam, Tag::Coin})
                    RC_ASSERT(!offer.cautions.has(tag));
            });
        });
        QVERIFY(holds);
    }

    // Source: checkin.md 13, acceptance check 6.
    void restingOffersNothingHighInEnergyToAChildWhoTiresFast()
    {
        const bool holds = rc::check("none high in energy", [] {
            forEachOffer(mairead(), Kite::Resting, false,
                         [](const Candidate &offer, const Question &) {
                             RC_ASSERT(offer.activity->energy != Energy::High);
                         });
        });
        QVERIFY(holds);
    }

    // Source: checkin.md 4, first extra rule; "first" means the three offers there.
    void afterTheBedtimeHourNothingAlertingIsOfferedWhateverTheKite()
    {
        const bool holds = rc::check("none alerting", [] {
            const auto kite = *rc::gen::element(Kite::Resting, Kite::Steady, Kite::Whirling,
                                                Kite::Clouds, Kite::Bag);
            forEachOffer(fin(), kite, true, [](const Candidate &offer, const Question &) {
                RC_ASSERT(offer.activity->effect != Effect::Alerting);
            });
        });
        QVERIFY(holds);
        QVERIFY(isTemptingOffered([](Activity &a) { a.effect = Effect::Alerting; },
                                  questionWith(fin(), Kite::Steady)));
    }

    void whatIsHeldBackComesInOnlyWhereNothingElseFillsThePlace()
    {
        const bool holds = rc::check("as few held-back offers as can be", [] {
            RandomShelf random(*rc::gen::inRange(3, 14), *rc::gen::arbitrary<unsigned>());
            Question question = questionWith(fin(), Kite::Clouds);
            question.stock.clear();
            question.records = random.records();
            const auto candidates = random.shelf().candidates();
            std::size_t known = 0;
            std::size_t held = 0;
            const auto isFree = [](const Candidate &one) { return boxPieces(one) == 0; };
            for (const Candidate &one : candidates) {
                const bool open = kitePlaceOf(one, question) == KitePlace::Open;
                known += isFree(one) && open ? 1 : 0;
                held += isFree(one) && !open ? 1 : 0;
            }
            std::size_t offeredHeld = 0;
            bool heldBefore = false;
            for (const Pick &pick : draftMenu(candidates, question).picks) {
                const bool open =
                    kitePlaceOf(candidates[pick.candidate], question) == KitePlace::Open;
                RC_ASSERT(!(open && heldBefore)); // held-back offers are shown last
                heldBefore = heldBefore || !open;
                offeredHeld += open ? 0 : 1;
            }
            const std::size_t missing = known < 3 ? 3 - known : 0;
            RC_ASSERT(offeredHeld == std::min(held, missing));
        });
        QVERIFY(holds);
    }

    // Source: checkin.md 4, the column "held back" of the state table and the extra rules;
    // activities.md 1.1 for many words; job.md scenario 7 for a child who tires fast.
    void theStateTableHoldsBack_data()
    {
        QTest::addColumn<Kite>("kite");
        QTest::addColumn<bool>("tiresFast");
        QTest::addColumn<Shelf::Change>("change");
        QTest::addColumn<KitePlace>("place");
        const auto row = [](const char *name, Kite kite, bool tiresFast,
                            const Shelf::Change &change, KitePlace place) {
            QTest::newRow(name) << kite << tiresFast << change << place;
        };
        const auto manyWords = [](Activity &a) { a.wordsNeeded = Words::Many; };
        const auto high = [](Activity &a) { a.energy = Energy::High; };
        const auto longFingers = [](Activity &a) { a.minutes.play = 7; };
        const auto manySmall = [](Activity &a) {
            a.cautions.add(Tag::Small);
            a.items = {boxUse("pieces", 12)};
        };
        const auto balloon = [](Activity &a) { a.cautions.add(Tag::Balloon); };
        const auto plain = [](Activity &) {};
        row("resting, many words", Kite::Resting, false, manyWords, KitePlace::HeldBack);
        row("resting, long finger work", Kite::Resting, false, longFingers, KitePlace::HeldBack);
        row("resting, high energy", Kite::Resting, false, high, KitePlace::Open);
        row("resting, high energy, tires fast", Kite::Resting, true, high, KitePlace::Never);
        row("steady, many words", Kite::Steady, false, manyWords, KitePlace::Open);
        row("steady, high energy, tires fast", Kite::Steady, true, high, KitePlace::HeldBack);
        row("whirling, many words", Kite::Whirling, false, manyWords, KitePlace::Never);
        row("whirling, many small pieces", Kite::Whirling, false, manySmall, KitePlace::HeldBack);
        row("whirling, a balloon", Kite::Whirling, false, balloon, KitePlace::HeldBack);
        row("clouds, new", Kite::Clouds, false, plain, KitePlace::HeldBack);
        row("bag, new", Kite::Bag, false, plain, KitePlace::Open);
    }
    void theStateTableHoldsBack()
    {
        QFETCH(Kite, kite);
        QFETCH(bool, tiresFast);
        QFETCH(Shelf::Change, change);
        QFETCH(KitePlace, place);
        Shelf shelf;
        shelf.add("one", change);
        const Question question = questionWith(tiresFast ? mairead() : fin(), kite);
        QCOMPARE(kitePlaceOf(shelf.candidates().front(), question), place);
    }

    // Source: checkin.md 4, "a child's own record beats the expectation".
    void whatLeftThisChildBusierThreeTimesOutOfFourLeavesTheWhirlingOffers()
    {
        Question question = questionWith(fin(), Kite::Whirling);
        Record &record = question.records[{"tempting"}] = knownFriend();
        record.pairs = {0, 2, 2, 0, 2};
        const auto plain = [](Activity &) {};
        QVERIFY(isTemptingOffered(plain, question));
        record.pairs = {0, 1, 2, 1, 3};
        QVERIFY(!isTemptingOffered(plain, question));
        question.kite = Kite::Steady;
        QVERIFY(isTemptingOffered(plain, question));
        question.kite = Kite::Whirling;
        record.pairs = {0, 0, 4, 0, 0}; // quieter, not busier
        QVERIFY(isTemptingOffered(plain, question));
    }

    // Source: checkin.md 4, "not now: the same three as on a day with no check-in".
    void theBagGivesTheMenuOfADayWithoutACheckIn()
    {
        RandomShelf random(30, 5);
        Question question = questionWith(fin(), Kite::Bag);
        question.records = random.records();
        const auto candidates = random.shelf().candidates();
        const MenuDraft bag = draftMenu(candidates, question);
        question.kite.reset();
        const MenuDraft without = draftMenu(candidates, question);
        QCOMPARE(idsOf(bag, candidates), idsOf(without, candidates));
        QCOMPARE(bag.value, without.value);
    }
};

QTEST_APPLESS_MAIN(TestKiteRules)
#include "tst_kite_rules.moc"
