#include "core/catalogue/most_careful.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

/// Where either says something, the one that @p better chooses; it is never unsaid.
template <class Choose>
std::optional<int> stricter(std::optional<int> one, std::optional<int> other, Choose choose)
{
    if (!one || !other)
        return one ? one : other;
    return choose(*one, *other);
}

Life stricterLife(Life one, const Life &other)
{
    const auto fewer = [](int a, int b) { return std::min(a, b); };
    const auto more = [](int a, int b) { return std::max(a, b); };
    one.openedDays = stricter(one.openedDays, other.openedDays, fewer);
    one.openAirDays = stricter(one.openAirDays, other.openAirDays, more);
    one.replaceDays = stricter(one.replaceDays, other.replaceDays, fewer);
    one.checkDays = stricter(one.checkDays, other.checkDays, fewer);
    one.checkEachUse = one.checkEachUse || other.checkEachUse;
    if (one.check.empty())
        one.check = other.check;
    one.singleUse = one.singleUse || other.singleUse;
    return one;
}

MeasuredHazards bothHazards(MeasuredHazards one, const MeasuredHazards &other)
{
    one.tags = one.tags | other.tags;
    one.isSmallBall = one.isSmallBall || other.isSmallBall;
    one.holdsSmallBall = one.holdsSmallBall || other.holdsSmallBall;
    one.isMarble = one.isMarble || other.isMarble;
    one.sealsAFace = one.sealsAFace || other.sealsAFace;
    return one;
}

} // namespace

ItemKind mostCareful(ItemKind one, const ItemKind &other)
{
    one.version = std::max(one.version, other.version);
    one.tags = one.tags | other.tags;
    one.hazards = bothHazards(one.hazards, other.hazards);
    for (const std::string &allergen : other.allergens) {
        if (std::ranges::find(one.allergens, allergen) == one.allergens.end())
            one.allergens.push_back(allergen);
    }
    one.divides = one.divides || other.divides;
    one.seatedOnly = one.seatedOnly || other.seatedOnly;
    one.cleanable = one.cleanable && other.cleanable;
    one.singleChild = one.singleChild || other.singleChild;
    one.life = stricterLife(std::move(one.life), other.life);
    return one;
}

ItemKind corrected(const ItemKind &builtIn, const ItemKind &said)
{
    ItemKind item = mostCareful(builtIn, said);
    item.version = builtIn.version + said.version;
    item.measures = said.measures;
    if (builtIn.inEnglish)
        item.inEnglish = std::make_shared<const ItemKind>(corrected(*builtIn.inEnglish, said));
    return item;
}

} // namespace lidlark::catalogue
