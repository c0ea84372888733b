#include "core/cli/build_sheet_print.h"

#include "core/wording/build_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

/// Only the offers that something is bought from.
Json buyJson(const workbench::Supply &supply, const workbench::SheetLine &line)
{
    Json buy = Json::array();
    for (std::size_t i = 0; i < line.packs.size(); ++i) {
        const workbench::PackOffer &offer = supply.offers[i];
        if (line.packs[i] > 0)
            buy.push_back({{"shop", offer.shop},
                           {"pieces", offer.pieces},
                           {"packs", line.packs[i]},
                           {"pence", offer.pence.value_or(0) * line.packs[i]}});
    }
    return buy;
}

Json lineJson(const workbench::Supply &supply, const workbench::SheetLine &line)
{
    return {
        {"item", line.item.value},      {"name", supply.name},       {"need", line.need.pieces},
        {"spares", line.need.spares},   {"in_stock", line.inStock},  {"packs", line.packCount()},
        {"buy", buyJson(supply, line)}, {"spend", line.spend.pence}, {"leftover", line.leftover}};
}

Json costJson(const workbench::BoxCost &cost)
{
    Json unpriced = Json::array();
    for (const ItemId &item : cost.unpriced)
        unpriced.push_back(item.value);
    return {{"material", cost.material.pence}, {"unpriced", unpriced}};
}

Json boxJson(const BuildFile &file, const workbench::BuildBox &box, const workbench::BoxCost &cost)
{
    Json json{{"code", box.code}, {"whose", box.whose}, {"design", box.design.value}};
    json.update(costJson(cost));
    json["differences"] = differencesOf(file, box);
    return json;
}

Json moreJson(const BuildFile &file, const workbench::OneMoreBox &more)
{
    const auto names = [&file](const ItemId &item) {
        return wording::Argument(nameOf(file, item));
    };
    Json changed = Json::array();
    for (const workbench::ChangedLine &line : more.changed)
        changed.push_back({{"item", line.after.item.value},
                           {"packs_before", line.before.packCount()},
                           {"packs", line.after.packCount()},
                           {"more", line.after.spend.pence - line.before.spend.pence},
                           {"sentence", wording::fill(wording::changedLineSentence(line, names))}});
    Json json{{"changed", changed}, {"spend_today", more.spend.pence}, {"more", more.more.pence}};
    json.update(costJson(more.inTheBox));
    json["sentence"] = wording::fill(wording::oneMoreSentence(more, file.build.currency));
    return json;
}

} // namespace

std::string nameOf(const BuildFile &file, const ItemId &item)
{
    const auto found = std::ranges::find(file.supplies, item, &workbench::Supply::item);
    return found == file.supplies.end() ? item.value : found->name;
}

std::vector<std::string> differencesOf(const BuildFile &file, const workbench::BuildBox &box)
{
    std::vector<std::string> words;
    const auto design = std::ranges::find(file.designs, box.design, &workbench::Design::id);
    if (design == file.designs.end())
        return words;
    const auto names = [&file](const ItemId &item) {
        return wording::Argument(nameOf(file, item));
    };
    for (const workbench::DesignDifference &difference :
         workbench::differencesFrom(*design, box.parts))
        words.push_back(wording::fill(wording::differenceSentence(difference, names)));
    return words;
}

std::string jsonText(const SheetAnswer &answer)
{
    const BuildFile &file = answer.file;
    Json lines = Json::array();
    Json boxes = Json::array();
    Json shelf = Json::object();
    for (std::size_t i = 0; i < file.supplies.size(); ++i)
        lines.push_back(lineJson(file.supplies[i], answer.sheet.lines[i]));
    for (std::size_t i = 0; i < file.build.boxes.size(); ++i)
        boxes.push_back(boxJson(file, file.build.boxes[i], answer.sheet.boxes[i]));
    for (const workbench::Supply &supply : workbench::shelfAfter(file.supplies, answer.sheet))
        shelf[supply.item.value] = supply.inStock;
    Json json{{"currency", file.build.currency},
              {"lines", lines},
              {"spend_today", answer.sheet.spend.pence},
              {"boxes", boxes},
              {"shelf_after", shelf}};
    if (answer.more)
        json["one_more"] = moreJson(file, *answer.more);
    // Names are what people typed: what is no UTF-8 is shown as such, not thrown at.
    return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace lidlark::cli
