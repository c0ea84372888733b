#include "core/workbench/purchase.h"

#include "core/journal/fields.h"
#include "core/workbench/standing.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <tuple>

namespace lidlark::workbench {

namespace {

using journal::Event;
using journal::Fields;
using Json = nlohmann::json;

constexpr int mostAside = std::numeric_limits<int>::max();
constexpr std::int64_t mostSpend = 1'000'000'000'000'000; ///< Far beyond; sums stay in 64 bits.

std::optional<SetAside> setAsideFromJson(const Json &json)
{
    if (!json.is_array() || json.size() > std::size_t{mostItems})
        return std::nullopt;
    SetAside aside;
    for (const Json &one : json) {
        const auto item = one.is_object() ? one.find("item") : one.end();
        if (!one.is_object() || item == one.end() || !item->is_string() || !one.contains("pieces"))
            return std::nullopt;
        const auto pieces = Fields::wholeOf(one.at("pieces"), -mostAside, mostAside);
        if (!pieces || !aside.emplace(ItemId{item->get<std::string>()}, *pieces).second)
            return std::nullopt;
    }
    return aside;
}

std::optional<Purchase> purchaseFrom(const Event &event)
{
    const Fields fields(event.fields);
    const auto bought = fields.json().find("bought");
    if (event.kind != journal::Kind::Build || bought == fields.json().end() || !bought->is_object())
        return std::nullopt;
    const Fields said(bought->dump(-1, ' ', false, Json::error_handler_t::replace));
    const auto day = dayFromText(said.text("day").value_or(""));
    const auto pence = said.json().find("pence");
    auto aside = setAsideFromJson(said.json().value("set_aside", Json()));
    if (!day || !aside || pence == said.json().end() || !pence->is_number_integer())
        return std::nullopt;
    const auto spend = pence->get<std::int64_t>();
    if (spend < 0 || spend > mostSpend)
        return std::nullopt;
    return Purchase{*day, {spend}, *std::move(aside)};
}

} // namespace

SetAside setAsideBy(std::span<const Purchase> purchases)
{
    SetAside all;
    for (const Purchase &purchase : purchases) {
        for (const auto &[item, pieces] : purchase.setAside)
            all[item] += pieces;
    }
    return all;
}

SetAside setAsideFrom(const Sheet &sheet)
{
    SetAside aside;
    for (const SheetLine &line : sheet.lines) {
        if (const std::int64_t pieces = line.need.pieces - line.need.back; pieces != 0)
            aside[line.item] = pieces;
    }
    return aside;
}

bool isSettled(const Sheet &sheet)
{
    return std::ranges::all_of(sheet.lines, [](const SheetLine &line) {
        return line.need.pieces == 0 && line.need.back == 0 && line.bought == 0;
    });
}

std::string fieldsOfPurchase(const BuildId &build, const Purchase &purchase)
{
    Json aside = Json::array();
    for (const auto &[item, pieces] : purchase.setAside)
        aside.push_back({{"item", item.value}, {"pieces", pieces}});
    return Json{
        {"build", build.value},
        {"bought",
         {{"day", toText(purchase.day)}, {"pence", purchase.spend.pence}, {"set_aside", aside}}}}
        .dump();
}

std::vector<Purchase> foldPurchases(std::span<const Event> events)
{
    std::vector<std::pair<const Event *, Purchase>> found;
    for (const Event &event : events) {
        if (auto purchase = purchaseFrom(event))
            found.emplace_back(&event, *std::move(purchase));
    }
    std::ranges::sort(found, [](const auto &a, const auto &b) {
        return a.second.day != b.second.day ? a.second.day < b.second.day
                                            : writtenLater(*b.first, *a.first);
    });
    std::vector<Purchase> purchases;
    for (auto &[event, purchase] : found)
        purchases.push_back(std::move(purchase));
    return purchases;
}

} // namespace lidlark::workbench
