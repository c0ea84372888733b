#include "core/workbench/needs.h"

#include "core/workbench/check_supply.h"
#include "core/workbench/item_places.h"

#include <algorithm>
#include <set>
#include <utility>

namespace lidlark::workbench {

namespace {

/// Looks a build over, box by box, and adds up what it needs.
class LookOver
{
public:
    LookOver(const Build &build, std::span<const Supply> supplies, const SetAside &aside)
        : m_build(build), m_supplies(supplies), m_aside(aside), m_places(supplies),
          m_needs(supplies.size()), m_listedIn(supplies.size(), 0)
    {
    }

    OrProblems<std::vector<Need>> needs()
    {
        if (m_build.boxes.size() > mostBoxes)
            find(BuildFault::TooManyBoxes, "boxes");
        if (m_supplies.size() > static_cast<std::size_t>(mostItems))
            find(BuildFault::TooManyItems, "items");
        if (!m_problems.empty())
            return m_problems;
        if (m_build.sparesPercent < 0 || m_build.sparesPercent > mostSparesPercent)
            find(BuildFault::SparesOutOfRange, "spares_percent");
        if (!isCurrency(m_build.currency))
            find(BuildFault::NoCurrency, "currency");
        for (const BuildBox &box : m_build.boxes)
            look(box);
        for (std::size_t i = 0; i < m_supplies.size(); ++i)
            look(i);
        if (!m_problems.empty())
            return m_problems;
        return m_needs;
    }

private:
    void find(BuildFault fault, std::string field, std::string about = {}, std::string also = {})
    {
        m_problems.push_back({fault, std::move(field), std::move(about), std::move(also)});
    }

    void look(const BuildBox &box)
    {
        ++m_boxesSeen;
        if (box.code.empty())
            find(BuildFault::NoCode, "boxes." + std::to_string(m_boxesSeen - 1) + ".code",
                 box.whose);
        else if (!m_codes.insert(box.code).second)
            find(BuildFault::CodeTwice, "boxes." + box.code + ".code", box.code);
        for (const BoxPart &part : box.parts) {
            const auto place = m_places.of(part.item);
            if (const auto fault = faultOf(part, place))
                find(*fault, "boxes." + box.code + ".parts." + part.item.value, box.code,
                     place ? m_supplies[*place].name : part.item.value);
            else
                m_needs[*place].pieces += part.pieces;
        }
    }

    std::optional<BuildFault> faultOf(const BoxPart &part, std::optional<std::size_t> place)
    {
        if (!place)
            return BuildFault::UnknownItem;
        if (std::exchange(m_listedIn[*place], m_boxesSeen) == m_boxesSeen)
            return BuildFault::PartTwice;
        if (part.pieces < 1)
            return BuildFault::TooFewPieces;
        if (part.pieces > mostPiecesInBox)
            return BuildFault::TooManyPieces;
        return std::nullopt;
    }

    void cover(Need &need, const ItemId &item) const
    {
        const auto found = m_aside.find(item);
        const std::int64_t aside =
            found != m_aside.end() ? std::max<std::int64_t>(0, found->second) : 0;
        need.covered = std::min(aside, need.pieces);
        need.back = aside - need.covered;
        need.pieces -= need.covered;
    }

    void look(std::size_t i)
    {
        const Supply &supply = m_supplies[i];
        Need &need = m_needs[i];
        cover(need, supply.item);
        if (supply.usedUp)
            need.spares = (need.pieces * m_build.sparesPercent + 99) / 100;
        const std::size_t before = m_problems.size();
        if (m_places.of(supply.item) != i)
            find(BuildFault::SupplyTwice, "items." + supply.item.value, supply.name);
        checkNumbers(supply, m_problems);
        if (need.pieces > 0)
            checkPrices(supply, m_build.currency, m_problems);
        if (m_problems.size() == before && supply.offers.empty() &&
            need.pieces + need.spares > supply.inStock + need.back)
            find(BuildFault::NowhereToBuy, "items." + supply.item.value + ".offers", supply.name);
    }

    const Build &m_build;
    std::span<const Supply> m_supplies;
    const SetAside &m_aside;
    ItemPlaces m_places;
    std::vector<Need> m_needs;
    std::vector<std::size_t> m_listedIn; ///< The last box that lists the item, counted from 1.
    std::size_t m_boxesSeen = 0;
    std::set<std::string> m_codes;
    BuildProblems m_problems;
};

} // namespace

OrProblems<std::vector<Need>> needsOf(const Build &build, std::span<const Supply> supplies,
                                      const SetAside &aside)
{
    return LookOver(build, supplies, aside).needs();
}

} // namespace lidlark::workbench
