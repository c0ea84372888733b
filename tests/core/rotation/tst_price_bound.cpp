#include <QtTest>

#include "core/rotation/best_sums.h"
#include "core/rotation/price_bound.h"
#include "tests/core/rotation/glpk_oracle.h"
#include "tests/core/rotation/random_problem.h"

#include <rapidcheck.h>

#include <bit>

using namespace lidlark::rotation;

namespace {

/// Every set of so many things looked at.
std::optional<std::int64_t> bestByLooking(const std::vector<Priced> &things, const Room &room)
{
    std::optional<std::int64_t> best;
    for (unsigned set = 0; set < 1u << things.size(); ++set) {
        std::int64_t price = 0;
        int minutes = 0;
        int messy = 0;
        for (std::size_t i = 0; i < things.size(); ++i) {
            if ((set >> i & 1u) == 0)
                continue;
            price += things[i].price;
            minutes += things[i].minutes;
            messy += things[i].isMessy ? 1 : 0;
        }
        const bool fits = static_cast<std::size_t>(std::popcount(set)) == room.count &&
                          minutes <= room.minutes && messy <= room.messy;
        if (fits && (!best || price > *best))
            best = price;
    }
    return best;
}

std::vector<Priced> someThings()
{
    std::vector<Priced> things(*rc::gen::inRange<std::size_t>(0, 10));
    for (Priced &thing : things)
        thing = {*rc::gen::inRange(-20, 20), *rc::gen::inRange(0, 6), *rc::gen::arbitrary<bool>()};
    return things;
}

/// A day with families, stock, mess and minutes, of which some choice or none keeps to all.
MenuProblem dayOf(int entries, unsigned seed)
{
    samples::ProblemShape shape;
    shape.entries = entries;
    shape.families = 5;
    shape.items = 6;
    shape.skills = 8;
    MenuProblem problem = samples::randomProblem(shape, seed);
    std::mt19937 source(seed);
    for (Entry &entry : problem.entries) {
        entry.minutes = 2 + static_cast<int>(source() % 9);
        entry.isNew = entry.isKnownFriend = entry.isWithoutTable = entry.isHeldBack = false;
    }
    return problem;
}

ChoiceRules rulesFor(int minutes)
{
    ChoiceRules rules;
    rules.offers = 4;
    rules.inForce = ConditionsInForce(static_cast<std::size_t>(SideCondition::Family));
    rules.minutes = minutes;
    return rules;
}

} // namespace

/// Guards the two bounds that a large search stands on: were one too low, the best choice could be
/// left out.
class TestPriceBound : public QObject
{
    Q_OBJECT

private slots:
    // Source: every set looked at.
    void sumsAreThoseOfEverySetLookedAt()
    {
        const bool holds = rc::check("largest sum, and a choice that has it", [] {
            const std::vector<Priced> things = someThings();
            const Room whole{*rc::gen::inRange<std::size_t>(1, 5), *rc::gen::inRange(0, 25),
                             *rc::gen::inRange(0, 4)};
            const BestSums sums(things, whole);
            const Room less{*rc::gen::inRange<std::size_t>(0, whole.count + 1),
                            *rc::gen::inRange(0, whole.minutes + 1),
                            *rc::gen::inRange(0, whole.messy + 1)};
            RC_ASSERT(sums.best(whole) == bestByLooking(things, whole));
            RC_ASSERT(sums.best(less) == bestByLooking(things, less));
            std::int64_t price = 0;
            for (const std::size_t place : sums.choice())
                price += things[place].price;
            if (sums.best(whole))
                RC_ASSERT(price == *sums.best(whole));
        });
        QVERIFY(holds);
    }

    // Source: GLPK 5.0 at zero gap (glpk_oracle.h).
    void noChoiceIsWorthMoreThanTheBound()
    {
        int lowered = 0;
        int infeasible = 0;
        for (unsigned seed = 0; seed < 150; ++seed) {
            const MenuProblem problem = dayOf(40, seed);
            const ChoiceRules rules = rulesFor(8 + static_cast<int>(seed % 20));
            const auto optimum = oracle::GlpkMenu(problem, rules).optimum();
            PriceBound prices(problem, rules);
            const auto before = prices.bound();
            prices.lower(seed % 2 == 0 ? optimum : std::nullopt, 60);
            infeasible += optimum ? 0 : 1;
            if (!optimum)
                continue;
            QVERIFY(prices.bound().has_value());
            QVERIFY2(*prices.bound() >= *optimum, qPrintable(QString::number(seed)));
            QVERIFY(*prices.bound() <= *before);
            lowered += *prices.bound() < *before ? 1 : 0;
        }
        qInfo("%d of 150 infeasible, %d bounds lowered", infeasible, lowered);
        QVERIFY(lowered > (150 - infeasible) / 2);
    }

    // By hand: the largest numbers the text format takes do not turn a bound round. The curve is
    // full after one minute, so four entries are worth their own and 100,000.
    void theLargestNumbersDoNotOverflow()
    {
        MenuProblem problem;
        problem.curves = {{{1, 100'000}}};
        problem.stock = {100'000};
        for (int i = 0; i < 8; ++i) {
            Entry entry;
            entry.worth = 1'000'000;
            entry.amounts = {{0, 10'000}};
            entry.needs = {{0, 1'000}};
            problem.entries.push_back(entry);
        }
        const ChoiceRules rules = rulesFor(1'000'000);
        PriceBound prices(problem, rules);
        constexpr int optimum = 4 * 1'000'000 + 100'000;
        QVERIFY(*prices.bound() >= optimum);
        prices.lower(std::nullopt, 60);
        QVERIFY(*prices.bound() >= optimum);
        QCOMPARE(prices.canReach(optimum).size(), std::size_t{8});
    }

    // Source: GLPK, with one entry after the other forced in by leaving out all others of no use:
    // an entry that is left out is in no choice worth the optimum.
    void whatIsLeftOutReachesTheOptimumNowhere()
    {
        for (unsigned seed = 0; seed < 12; ++seed) {
            const MenuProblem problem = dayOf(30, 500 + seed);
            const ChoiceRules rules = rulesFor(24);
            const auto optimum = oracle::GlpkMenu(problem, rules).optimum();
            if (!optimum)
                continue;
            PriceBound prices(problem, rules);
            prices.lower(optimum, 60);
            const auto kept = prices.canReach(*optimum);
            for (std::size_t entry = 0; entry < problem.entries.size(); ++entry) {
                if (std::ranges::count(kept, entry) > 0)
                    continue;
                MenuProblem forced = problem;
                constexpr int bait = 100'000; // so dear that no choice leaves it out if it can
                forced.entries[entry].worth += bait;
                const auto with = oracle::GlpkMenu(forced, rules).optimum();
                QVERIFY(!with || *with - bait < *optimum);
            }
        }
    }
};

QTEST_APPLESS_MAIN(TestPriceBound)
#include "tst_price_bound.moc"
