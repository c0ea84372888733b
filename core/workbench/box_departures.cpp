#include "core/workbench/box_departures.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

const BoxPart *partOf(const std::vector<BoxPart> &parts, const ItemId &item)
{
    const auto found = std::ranges::find(parts, item, &BoxPart::item);
    return found != parts.end() ? &*found : nullptr;
}

bool isSwappedOut(const KeptBox &box, const ItemId &item)
{
    return std::ranges::find(box.box.parts, item, &BoxPart::insteadOf) != box.box.parts.end();
}

std::optional<Departure> reasonFor(const KeptBox &box, const ItemId &item)
{
    const auto &all = box.personal.departures;
    const auto found = std::ranges::find(all, item, &Departure::item);
    return found != all.end() ? std::optional(*found) : std::nullopt;
}

/// The pieces a child cuts with are the same thing for either hand.
bool isOnlyOtherHand(const BoxPart &part)
{
    return !part.insteadOf.empty() && kindOf(part.insteadOf) == kindOf(part.item) &&
           handOf(part.item) == Hand::Left;
}

std::optional<CallOut> callOutOf(const KeptBox &box, const BoxPart &part, const Design *design)
{
    CallOut call;
    call.item = part.item;
    call.pieces = part.pieces;
    if (!part.insteadOf.empty()) {
        if (isOnlyOtherHand(part) && box.personal.hand == Hand::Left)
            return std::nullopt; // the hand is called out by itself
        call.kind = CallKind::Swapped;
        call.insteadOf = part.insteadOf;
        call.because = reasonFor(box, part.insteadOf);
        return call;
    }
    if (design == nullptr)
        return std::nullopt;
    const BoxPart *usual = partOf(design->parts, part.item);
    if (usual != nullptr && usual->pieces == part.pieces)
        return std::nullopt;
    call.kind = usual != nullptr ? CallKind::OtherCount : CallKind::Added;
    call.usual = usual != nullptr ? usual->pieces : 0;
    call.because = reasonFor(box, part.item);
    return call;
}

void addLeftOut(std::vector<CallOut> &calls, const KeptBox &box, const Design &design)
{
    for (const BoxPart &usual : design.parts) {
        if (partOf(box.box.parts, usual.item) != nullptr || isSwappedOut(box, usual.item))
            continue;
        CallOut call;
        call.kind = CallKind::LeftOut;
        call.item = usual.item;
        call.because = reasonFor(box, usual.item);
        calls.push_back(call);
    }
}

enum class Holds { No, Yes, Unknown };

Holds holdsOf(const ItemId &item, child::Avoided what, const catalogue::Catalogue &catalogue,
              const KeptSupplies &supplies)
{
    if (const catalogue::ItemKind *kind = catalogue.item(kindOf(item)))
        return kind->tags.has(child::tagOf(what)) ? Holds::Yes : Holds::No;
    const auto supply = supplies.find(item);
    const bool looked = supply != supplies.end() && supply->second.freeOf.contains(what);
    return looked ? Holds::No : Holds::Unknown;
}

} // namespace

std::vector<CallOut> callOutsOf(const KeptBox &box, const Design *design)
{
    std::vector<CallOut> calls;
    if (box.personal.hand == Hand::Left)
        calls.emplace_back();
    for (const child::Avoided what : box.personal.avoids) {
        CallOut call;
        call.kind = CallKind::Avoids;
        call.avoided = what;
        calls.push_back(call);
    }
    for (const BoxPart &part : box.box.parts) {
        if (auto call = callOutOf(box, part, design))
            calls.push_back(*std::move(call));
    }
    if (design != nullptr)
        addLeftOut(calls, box, *design);
    std::ranges::stable_sort(calls, {}, &CallOut::kind);
    return calls;
}

bool isSpecial(const KeptBox &box, const Design *design)
{
    return design == nullptr || !box.personal.departures.empty() ||
           !callOutsOf(box, design).empty();
}

std::optional<std::string> conflictIn(const KeptBox &box, const catalogue::Catalogue &catalogue,
                                      const KeptSupplies &supplies)
{
    const bool left = box.personal.hand == Hand::Left;
    for (const BoxPart &part : box.box.parts) {
        const Hand made = handOf(part.item);
        if (made != Hand::Unsaid && (made == Hand::Left) != left)
            return part.item.value + ": made for the other hand";
        for (const child::Avoided what : box.personal.avoids) {
            const Holds holds = holdsOf(part.item, what, catalogue, supplies);
            if (holds == Holds::Unknown)
                return part.item.value + ": nobody has said what it holds";
            if (holds == Holds::Yes)
                return part.item.value + ": holds what this home must avoid";
        }
    }
    return std::nullopt;
}

} // namespace lidlark::workbench
