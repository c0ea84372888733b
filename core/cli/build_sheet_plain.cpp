#include "core/cli/build_sheet_print.h"

#include "core/wording/build_words.h"
#include "core/wording/money_words.h"

#include <algorithm>
#include <array>
#include <map>

namespace lidlark::cli {

namespace {

using Row = std::array<std::string, 7>;

/// Letters, not bytes: a pound sign is one.
std::size_t lettersOf(const std::string &text)
{
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char byte) { return (static_cast<unsigned char>(byte) & 0xc0U) != 0x80U; }));
}

/// The first column on the left of its width, numbers on the right of theirs.
std::string tableOf(const std::vector<Row> &rows)
{
    std::array<std::size_t, 7> widths{};
    for (const Row &row : rows) {
        for (std::size_t column = 0; column < row.size(); ++column)
            widths[column] = std::max(widths[column], lettersOf(row[column]));
    }
    std::string text;
    for (const Row &row : rows) {
        text += row[0];
        std::size_t gap = widths[0] - lettersOf(row[0]);
        for (std::size_t column = 1; column < row.size(); ++column) {
            gap += 2 + widths[column] - lettersOf(row[column]);
            text += std::string(gap, ' ') + row[column];
            gap = 0;
        }
        text += '\n';
    }
    return text;
}

/// Where there is a choice, what to ask for in which shop.
void addOffers(std::vector<Row> &rows, const workbench::Supply &supply,
               const workbench::SheetLine &line, const std::string &currency)
{
    for (std::size_t i = 0; i < supply.offers.size() && supply.offers.size() > 1; ++i) {
        const workbench::PackOffer &offer = supply.offers[i];
        const std::string shop = offer.shop.empty() ? "" : ", " + offer.shop;
        if (line.packs[i] > 0)
            rows.push_back({"  of " + std::to_string(offer.pieces) + shop, "", "", "",
                            std::to_string(line.packs[i]),
                            wording::moneyText(offer.pence.value_or(0) * line.packs[i], currency),
                            ""});
    }
}

std::string buyTable(const SheetAnswer &answer)
{
    const std::string &currency = answer.file.build.currency;
    std::vector<Row> rows{{"Item", "Need", "Spares", "In stock", "Packs", "Spend", "Left over"}};
    for (std::size_t i = 0; i < answer.sheet.lines.size(); ++i) {
        const workbench::SheetLine &line = answer.sheet.lines[i];
        if (line.need.pieces == 0)
            continue;
        rows.push_back({answer.file.supplies[i].name, std::to_string(line.need.pieces),
                        std::to_string(line.need.spares), std::to_string(line.inStock),
                        std::to_string(line.packCount()),
                        wording::moneyText(line.spend.pence, currency),
                        std::to_string(line.leftover)});
        addOffers(rows, answer.file.supplies[i], line, currency);
    }
    return tableOf(rows);
}

std::string unpricedText(const BuildFile &file, const workbench::BoxCost &cost)
{
    std::string text;
    for (const ItemId &item : cost.unpriced)
        text += (text.empty() ? " without " : ", ") + nameOf(file, item);
    return text.empty() ? text : text + ", whose price nobody knows";
}

/// What is said of a box besides its code.
std::string aboutBox(const SheetAnswer &answer, std::size_t index)
{
    const BuildFile &file = answer.file;
    const workbench::BuildBox &box = file.build.boxes[index];
    const workbench::BoxCost &cost = answer.sheet.boxes[index];
    std::string text =
        wording::moneyText(cost.material.pence, file.build.currency) + unpricedText(file, cost);
    for (const std::string &difference : differencesOf(file, box))
        text += "\n      " + difference;
    return text;
}

/// Boxes of which the same is said, in the order of the first of each.
std::string boxesText(const SheetAnswer &answer)
{
    const std::vector<workbench::BuildBox> &boxes = answer.file.build.boxes;
    std::vector<std::pair<std::string, std::vector<std::string>>> groups;
    std::map<std::string, std::size_t> known;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const std::string about = aboutBox(answer, i);
        const auto [place, isNew] = known.emplace(about, groups.size());
        if (isNew)
            groups.emplace_back(about, std::vector<std::string>());
        groups[place->second].second.push_back(boxes[i].code);
    }
    std::string text;
    for (const auto &[about, codes] : groups) {
        text += "  " + codes.front();
        if (codes.size() > 1)
            text += " and " + std::to_string(codes.size() - 1) + " more like it";
        text += ": " + about + '\n';
    }
    return text;
}

std::string moreText(const SheetAnswer &answer)
{
    const BuildFile &file = answer.file;
    const auto names = [&file](const ItemId &item) {
        return wording::Argument(nameOf(file, item));
    };
    std::string text =
        "\n" + wording::fill(wording::oneMoreSentence(*answer.more, file.build.currency)) + "\n";
    for (const workbench::ChangedLine &line : answer.more->changed)
        text += "  " + wording::fill(wording::changedLineSentence(line, names)) + "\n";
    return text + "  Then you spend today: " +
           wording::moneyText(answer.more->spend.pence, file.build.currency) + "\n";
}

} // namespace

std::string plainText(const SheetAnswer &answer)
{
    std::string text = buyTable(answer) + "\nWhat you spend today: " +
                       wording::moneyText(answer.sheet.spend.pence, answer.file.build.currency) +
                       "\n\nWhat is in each box:\n" + boxesText(answer);
    if (answer.more)
        text += moreText(answer);
    return text;
}

} // namespace lidlark::cli
