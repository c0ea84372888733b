#include "core/workbench/box_cost.h"

#include "core/workbench/item_places.h"

#include <boost/multiprecision/cpp_int.hpp>

namespace lidlark::workbench {

namespace {

using Whole = boost::multiprecision::cpp_int;

/// Prices of a piece as fractions over one denominator.
class SharedDenominator
{
public:
    explicit SharedDenominator(std::span<const PiecePrice> pieces)
    {
        for (const PiecePrice &price : pieces) {
            if (price.pieces > 0)
                m_denominator = lcm(m_denominator, Whole(price.pieces));
        }
        for (const PiecePrice &price : pieces)
            m_numerators.push_back(
                price.pieces > 0 ? Whole(m_denominator / price.pieces * price.pence) : Whole(0));
    }

    [[nodiscard]] const Whole &numerator(std::size_t item) const { return m_numerators[item]; }

    /// Half a penny is rounded up.
    [[nodiscard]] MaterialPence rounded(const Whole &numerator) const
    {
        const Whole pence = (numerator * 2 + m_denominator) / (m_denominator * 2);
        return {pence.convert_to<std::int64_t>()};
    }

private:
    Whole m_denominator = 1;
    std::vector<Whole> m_numerators;
};

} // namespace

std::vector<BoxCost> costsOf(std::span<const BuildBox> boxes, std::span<const Supply> supplies,
                             std::span<const PiecePrice> pieces)
{
    const ItemPlaces places(supplies);
    const SharedDenominator prices(pieces);
    std::vector<BoxCost> costs;
    costs.reserve(boxes.size());
    for (const BuildBox &box : boxes) {
        BoxCost cost;
        Whole sum = 0;
        for (const BoxPart &part : box.parts) {
            const std::size_t item = places.of(part.item).value();
            sum += prices.numerator(item) * part.pieces;
            if (pieces[item].pieces == 0)
                cost.unpriced.push_back(part.item);
        }
        cost.material = prices.rounded(sum);
        costs.push_back(std::move(cost));
    }
    return costs;
}

} // namespace lidlark::workbench
