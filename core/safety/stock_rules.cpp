#include "core/safety/rules.h"

#include <map>

namespace lidlark::safety {

namespace {

using catalogue::ComesBack;
using catalogue::Fate;
using catalogue::ItemUse;
using catalogue::Role;
using catalogue::Source;

/// What a form cannot do without: its must items, and whatever stands in for one. Instead of and
/// nice items can be missing.
bool isNeeded(const Part &part)
{
    return part.swapped() || part.use->role == Role::Must;
}

/// Pieces needed of each item; two parts may be played with the same swap.
std::map<ItemId, int> piecesNeeded(const Form &form)
{
    std::map<ItemId, int> needed;
    for (const Part &part : form.parts) {
        if (isNeeded(part) && part.kind)
            needed[part.kind->id] += part.use->quantity;
    }
    return needed;
}

void boxRules(const ItemId &item, int needed, const BoxState &box, Refusal &refusal)
{
    const auto stock = box.items.find(item);
    if (stock == box.items.end())
        refusal.push_back({.code = ReasonCode::ItemMissing, .item = item});
    else if (stock->second.low < needed)
        refusal.push_back({.code = ReasonCode::ItemUsedUp, .item = item, .number = needed});
    else if (stock->second.pastDate)
        refusal.push_back({.code = ReasonCode::ItemPastDate, .item = item});
    else if (stock->second.toWash)
        refusal.push_back({.code = ReasonCode::ItemToWash, .item = item});
}

/// Whether a part that is not needed is there beside what the needed ones take.
bool isThereToo(const Part &part, const std::map<ItemId, int> &needed, const Situation &now)
{
    if (part.kind->source == Source::Home)
        return isOnHand(*part.kind, now);
    const auto stock = now.box.items.find(part.kind->id);
    if (!now.box.here || stock == now.box.items.end() || stock->second.pastDate ||
        stock->second.toWash)
        return false;
    const auto taken = needed.find(part.kind->id);
    const int left = stock->second.low - (taken == needed.end() ? 0 : taken->second);
    return left >= part.use->quantity;
}

/// A swap lives by its own rules of coming home, not by those of what it replaces: a scarf is not
/// used up as a balloon is.
ItemUse useOf(const Part &part)
{
    ItemUse use = *part.use;
    if (!part.swapped())
        return use;
    use.item = part.kind->id;
    use.source = part.kind->source;
    use.countBack = use.quantity;
    use.fate = Fate::ComesBack;
    if (part.kind->comesBack == ComesBack::PartUsed)
        use.fate = Fate::PartUsed;
    if (part.kind->comesBack == ComesBack::UsedUp) {
        use.fate = Fate::UsedUp;
        use.countBack = 0;
    }
    return use;
}

} // namespace

void stockRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    const Situation &now = facts.situation;
    bool usesBox = false;
    for (const Part &part : form.parts) {
        if (!part.kind)
            refusal.push_back({.code = ReasonCode::ItemMissing, .item = part.use->item});
    }
    for (const auto &[item, needed] : piecesNeeded(form)) {
        const catalogue::ItemKind *kind = now.catalogue.item(item);
        if (kind->source == Source::Box) {
            usesBox = true;
            boxRules(item, needed, now.box, refusal);
        } else if (!isOnHand(*kind, now)) {
            refusal.push_back({.code = ReasonCode::HomeLacksExtra, .item = item});
        }
    }
    if (usesBox && !now.box.here)
        refusal.push_back({.code = ReasonCode::BoxElsewhere, .name = now.box.place});
}

std::vector<ItemUse> itemsUsed(const Form &form, const Facts &facts)
{
    const Situation &now = facts.situation;
    const std::map<ItemId, int> needed = piecesNeeded(form);
    std::vector<ItemUse> uses;
    for (const Part &part : form.parts) {
        if (isNeeded(part) || isThereToo(part, needed, now))
            uses.push_back(useOf(part));
    }
    return uses;
}

} // namespace lidlark::safety
