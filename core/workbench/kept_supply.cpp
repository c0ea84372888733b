#include "core/workbench/kept_supply.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"
#include "core/workbench/lot.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

using journal::Fields;
using Json = nlohmann::json;

constexpr std::size_t longestNote = 280;

Json jsonOf(const PackOffer &offer)
{
    Json object{{"shop", offer.shop}, {"pieces", offer.pieces}, {"currency", offer.currency}};
    if (offer.pence)
        object["pence"] = *offer.pence;
    return object;
}

std::optional<PackOffer> offerFrom(const Json &json)
{
    const Fields fields(json.dump(-1, ' ', false, Json::error_handler_t::replace));
    const auto pieces = fields.whole("pieces", 1, mostPiecesInPack);
    if (!pieces)
        return std::nullopt;
    PackOffer offer{fields.text("shop").value_or(""), *pieces, std::nullopt,
                    fields.text("currency").value_or("")};
    if (fields.json().contains("pence")) {
        const auto pence = fields.whole("pence", 0, static_cast<int>(mostPenceForPack));
        if (!pence)
            return std::nullopt;
        offer.pence = *pence;
    }
    return offer;
}

std::optional<std::string> problemWith(const PackOffer &offer)
{
    if (offer.shop.size() > longestName)
        return "shop: too long";
    if (offer.pieces < 1 || offer.pieces > mostPiecesInPack)
        return "pack size: 1 to 100000 pieces";
    if (offer.pence && (*offer.pence < 0 || *offer.pence > mostPenceForPack))
        return "price: nothing below zero, or above 100000.00";
    const bool threeCapitals =
        offer.currency.size() == 3 && std::ranges::all_of(offer.currency, [](char letter) {
            return letter >= 'A' && letter <= 'Z';
        });
    if (!offer.currency.empty() && !threeCapitals)
        return "currency: three capital letters";
    return std::nullopt;
}

} // namespace

std::string fieldsOf(const KeptSupply &kept)
{
    Json offers = Json::array();
    for (const PackOffer &offer : kept.supply.offers)
        offers.push_back(jsonOf(offer));
    Json freeOf = Json::array();
    for (const child::Avoided what : kept.freeOf)
        freeOf.push_back(child::avoidedNames.of(what));
    return Json{{"item", kept.supply.item.value},
                {"name", kept.supply.name},
                {"offers", offers},
                {"stock", kept.supply.inStock},
                {"used_up", kept.supply.usedUp},
                {"lot", kept.lot},
                {"note", kept.note},
                {"free_of", freeOf}}
        .dump();
}

std::optional<KeptSupply> supplyFrom(const std::string &text)
{
    const Fields fields(text);
    const auto item = fields.text("item");
    const auto stock = fields.whole("stock", 0, mostInStock);
    const Json offers = fields.json().value("offers", Json::array());
    if (!item || item->empty() || !stock || !offers.is_array() ||
        offers.size() > std::size_t{mostOffers})
        return std::nullopt;
    KeptSupply kept;
    kept.supply.item = {*item};
    kept.supply.name = fields.text("name").value_or(*item);
    kept.supply.inStock = *stock;
    kept.supply.usedUp = fields.isTrue("used_up");
    kept.lot = fields.text("lot").value_or("");
    kept.note = fields.text("note").value_or("");
    for (const Json &json : fields.json().value("free_of", Json::array())) {
        const auto what =
            json.is_string() ? child::avoidedNames.parse(json.get<std::string>()) : std::nullopt;
        if (what)
            kept.freeOf.insert(*what);
    }
    for (const Json &json : offers) {
        const auto offer = offerFrom(json);
        if (!offer)
            return std::nullopt;
        kept.supply.offers.push_back(*offer);
    }
    return kept;
}

std::optional<KeptSupply> foldSupply(std::span<const journal::Event> events,
                                     const journal::Seen &seen)
{
    std::vector<journal::Event> readable;
    std::ranges::copy_if(events, std::back_inserter(readable), [](const journal::Event &event) {
        return supplyFrom(event.fields).has_value();
    });
    const journal::Event *latest = journal::latestOf(readable, journal::Kind::Supply, seen);
    return latest != nullptr ? supplyFrom(latest->fields) : std::nullopt;
}

std::optional<std::string> problemWith(const KeptSupply &kept)
{
    if (kept.supply.item.empty())
        return "item: empty";
    if (kept.supply.name.empty())
        return "name: empty";
    if (kept.supply.name.size() > longestName)
        return "name: too long";
    if (kept.supply.inStock < 0)
        return "stock: below zero";
    if (kept.supply.inStock > mostInStock)
        return "stock: more than 1000000000";
    if (kept.supply.offers.size() > std::size_t{mostOffers})
        return "packs: more than 50 ways to buy it";
    if (kept.lot.size() > longestLot)
        return "lot: too long";
    if (kept.note.size() > longestNote)
        return "note: too long";
    for (const PackOffer &offer : kept.supply.offers) {
        if (auto problem = problemWith(offer))
            return problem;
    }
    return std::nullopt;
}

} // namespace lidlark::workbench
