#include <QTest>

#include "core/workbench/cheapest_packs.h"

#include "glpk_packs.h"

#include <rapidcheck.h>

#include <algorithm>
#include <compare>

using namespace lidlark::workbench;

namespace {

using Offers = std::vector<PackPrice>;

/// What is promised, in the order of what counts: money, packs, pieces, then more of the earlier.
struct Bill {
    std::int64_t pence = 0;
    std::int64_t packs = 0;
    std::int64_t pieces = 0;
    std::vector<int> fewer; ///< Packs of each offer below zero: more of an earlier one is less.
    auto operator<=>(const Bill &) const = default;
};

Bill billOf(const Offers &offers, const std::vector<int> &packs)
{
    Bill bill;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        bill.pence += offers[i].pence * packs[i];
        bill.packs += packs[i];
        bill.pieces += offers[i].pieces * packs[i];
        bill.fewer.push_back(-packs[i]);
    }
    return bill;
}

/// Every purchase there is: of each offer none up to as many as would do alone.
class EveryPurchase
{
public:
    EveryPurchase(const Offers &offers, std::int64_t pieces) : m_offers(offers), m_pieces(pieces)
    {
        m_packs.resize(offers.size());
        look(0, pieces);
    }
    [[nodiscard]] const Bill &best() const { return *m_best; }

private:
    void look(std::size_t offer, std::int64_t wanted)
    {
        if (offer == m_offers.size()) {
            const Bill bill = billOf(m_offers, m_packs);
            if (wanted <= 0 && (!m_best || bill < *m_best))
                m_best = bill;
            return;
        }
        const std::int64_t size = m_offers[offer].pieces;
        const std::int64_t most = wanted > 0 ? (wanted + size - 1) / size : 0;
        for (std::int64_t packs = 0; packs <= most; ++packs) {
            m_packs[offer] = static_cast<int>(packs);
            look(offer + 1, wanted - packs * size);
        }
        m_packs[offer] = 0;
    }

    const Offers &m_offers;
    std::int64_t m_pieces;
    std::vector<int> m_packs;
    std::optional<Bill> m_best;
};

/// @param evenPercent of the offers have the price a piece of the first, so that there are ties.
Offers randomOffers(int most, int pieces, int pence, int evenPercent)
{
    Offers offers(static_cast<std::size_t>(*rc::gen::inRange(1, most + 1)));
    const int aPiece = *rc::gen::inRange(0, 4);
    for (PackPrice &offer : offers) {
        offer.pieces = *rc::gen::inRange(1, pieces + 1);
        offer.pence = *rc::gen::inRange(0, 100) < evenPercent ? offer.pieces * aPiece
                                                              : *rc::gen::inRange(0, pence + 1);
    }
    return offers;
}

std::int64_t costOf(const Offers &offers, std::int64_t pieces)
{
    return billOf(offers, cheapestPacks(offers, pieces)).pence;
}

} // namespace

/// The cheapest combination of packs (design.md 8): exactly, and of equal ones always the same.
class TestCheapestPacks : public QObject
{
    Q_OBJECT

private slots:
    void aChoiceWorkedOutByHand_data()
    {
        QTest::addColumn<int>("pieces");
        QTest::addColumn<std::vector<int>>("packs");
        // Packs of 10 for 100, of 24 for 200, of 7 for 70. The 24 is cheapest a piece (8.3).
        QTest::newRow("nothing") << 0 << std::vector{0, 0, 0};
        QTest::newRow("more on the shelf than needed") << -5 << std::vector{0, 0, 0};
        QTest::newRow("the smallest does") << 7 << std::vector{0, 0, 1};
        QTest::newRow("8: a ten for 100, two sevens are 140") << 8 << std::vector{1, 0, 0};
        QTest::newRow("17: ten and seven for 170") << 17 << std::vector{1, 0, 1};
        QTest::newRow("18: one pack for 200, two tens cost as much") << 18 << std::vector{0, 1, 0};
        QTest::newRow("31: 270") << 31 << std::vector{0, 1, 1};
        QTest::newRow("240: ten large ones") << 240 << std::vector{0, 10, 0};
        QTest::newRow("241: and a seven") << 241 << std::vector{0, 10, 1};
    }

    void aChoiceWorkedOutByHand()
    {
        QFETCH(int, pieces);
        const Offers offers{{10, 100}, {24, 200}, {7, 70}};
        QTEST(cheapestPacks(offers, pieces), "packs");
    }

    void equalOffersAreTakenInTheirOrder()
    {
        const Offers offers{{5, 50}, {10, 100}, {10, 100}};
        QCOMPARE(cheapestPacks(offers, 20), (std::vector{0, 2, 0})); // fewer packs first
        QCOMPARE(cheapestPacks(offers, 15), (std::vector{1, 1, 0})); // less left over
    }

    /// The judge looks at every purchase.
    void noPurchaseIsBetter()
    {
        QVERIFY(rc::check("nothing is cheaper, smaller or earlier", [] {
            const Offers offers = randomOffers(4, 12, 30, *rc::gen::element(0, 50, 100));
            const int pieces = *rc::gen::inRange(1, 40);
            const EveryPurchase every(offers, pieces);
            RC_ASSERT(billOf(offers, cheapestPacks(offers, pieces)) == every.best());
        }));
    }

    /// Numbers of a large build: the judge is GLPK, each answer proven by it.
    void anotherSolverPaysAsMuch()
    {
        int judged = 0;
        QVERIFY(rc::check("GLPK pays as much", [&judged] {
            const Offers offers = randomOffers(5, 300, 3'000, *rc::gen::element(0, 0, 40));
            const std::int64_t pieces = *rc::gen::inRange(1, 130'000);
            judge::GlpkPacks glpk;
            glpk.addItem(offers, pieces);
            const auto least = glpk.least(10'000);
            if (!least)
                return; // it did not get through: nothing is judged
            ++judged;
            RC_ASSERT(costOf(offers, pieces) == *least);
        }));
        qInfo("GLPK judged %d of 100", judged);
        QVERIFY2(judged >= 50, "the judge proved too few answers to judge anything");
    }

    /// What lies beyond the bound is bought from the best offer: a wrong bound would show where
    /// the numbers are large and the offers close to each other.
    void itIsNoDearerThanLookingAtEachPiece()
    {
        QVERIFY(rc::check("as cheap as reckoning piece by piece", [] {
            Offers offers = randomOffers(5, 60, 0, 0);
            for (PackPrice &offer : offers) // within a few pence of each other a pack
                offer.pence = offer.pieces * 20 + *rc::gen::inRange(0, 6);
            const std::size_t pieces = static_cast<std::size_t>(*rc::gen::inRange(1, 5'000));
            std::vector<std::int64_t> least(pieces + 1, 0);
            for (std::size_t wanted = 1; wanted <= pieces; ++wanted) {
                least[wanted] = INT64_MAX;
                for (const PackPrice &offer : offers) {
                    const auto size = static_cast<std::size_t>(offer.pieces);
                    const std::int64_t rest = wanted > size ? least[wanted - size] : 0;
                    least[wanted] = std::min(least[wanted], rest + offer.pence);
                }
            }
            RC_ASSERT(costOf(offers, static_cast<std::int64_t>(pieces)) == least[pieces]);
        }));
    }

    void theOrderOfOffersDoesNotChangeThePrice()
    {
        QVERIFY(rc::check("the price is the same backwards", [] {
            Offers offers = randomOffers(6, 500, 5'000, *rc::gen::element(0, 50));
            const int pieces = *rc::gen::inRange(1, 200'000);
            const std::int64_t forwards = costOf(offers, pieces);
            std::ranges::reverse(offers);
            RC_ASSERT(costOf(offers, pieces) == forwards);
        }));
    }

    void theLargestNumbersThereAre()
    {
        // Two packs of nearly the same size and price: nothing can be ruled out beforehand.
        const Offers offers{{99'991, 10'000'000}, {99'989, 9'999'800}, {1, 10'000'000}};
        const std::vector<int> packs = cheapestPacks(offers, 20'000'000);
        const Bill bill = billOf(offers, packs);
        QVERIFY(bill.pieces >= 20'000'000);
        QVERIFY(bill.pence <= 201 * 10'000'000LL);
        const Offers ones{{1, 10'000'000}};
        QCOMPARE(cheapestPacks(ones, 20'000'000), std::vector{20'000'000});
    }
};

QTEST_APPLESS_MAIN(TestCheapestPacks)
#include "tst_cheapest_packs.moc"
