#include <QtTest>

#include "core/rotation/best_sums.h"

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

} // namespace

/// Guards the bound of the minutes together with the mess: were it too low, the best choice could
/// be left out.
class TestBestSums : public QObject
{
    Q_OBJECT

private slots:
    // Source: every set looked at.
    void sumsAreThoseOfEverySetLookedAt()
    {
        const bool holds = rc::check("largest sum", [] {
            const std::vector<Priced> things = someThings();
            const Room whole{*rc::gen::inRange<std::size_t>(1, 5), *rc::gen::inRange(0, 25),
                             *rc::gen::inRange(0, 4)};
            const BestSums sums(things, whole);
            const Room less{*rc::gen::inRange<std::size_t>(0, whole.count + 1),
                            *rc::gen::inRange(0, whole.minutes + 1),
                            *rc::gen::inRange(0, whole.messy + 1)};
            RC_ASSERT(sums.best(whole) == bestByLooking(things, whole));
            RC_ASSERT(sums.best(less) == bestByLooking(things, less));
        });
        QVERIFY(holds);
    }
};

QTEST_APPLESS_MAIN(TestBestSums)
#include "tst_best_sums.moc"
