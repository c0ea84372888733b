#include "core/usecase/box_items.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

constexpr int daysBetweenCounts = 30; // once a month (job.md G8) [P]
constexpr int daysOfWeek = 7;

/// The Monday of that week: 1970-01-01 was a Thursday.
Day mondayOf(Day day)
{
    const int sinceMonday = ((day.number + 3) % daysOfWeek + daysOfWeek) % daysOfWeek;
    return day - sinceMonday;
}

Day lastCountOf(const store::ItemRow &row, Day today)
{
    if (row.counted && *row.counted <= today)
        return *row.counted;
    return row.arrivals.empty() ? today : std::min(today, row.arrivals.front().day);
}

} // namespace

box::KeepingRules keepingRulesOf(const catalogue::ItemKind &kind)
{
    return {kind.life.openedDays, kind.life.openAirDays, kind.life.replaceDays, kind.life.checkDays,
            kind.isPerishable()};
}

box::Freshness freshnessOf(const store::ItemRow &row, const catalogue::ItemKind *kind, Day today)
{
    const box::Stock stock{row.arrivals, row.low, row.high, row.out};
    const box::KeepingRules rules = kind != nullptr ? keepingRulesOf(*kind) : box::KeepingRules{};
    box::ItemCare care = row.care;
    if (row.counted)
        care.checked = std::max(care.checked.value_or(*row.counted), *row.counted);
    return box::freshnessOf(stock, care, rules, today);
}

std::vector<BoxItem> boxItemsOf(const Family &family, const catalogue::Catalogue &catalogue,
                                Day today)
{
    std::vector<BoxItem> items;
    items.reserve(family.items.size());
    const bool countDue = countIsDue(family, today);
    for (const store::ItemRow &row : family.items) {
        BoxItem item;
        item.row = row;
        item.kind = catalogue.item(row.item);
        item.freshness = freshnessOf(row, item.kind, today);
        if (!row.requests.empty())
            item.request = row.requests.back();
        for (const box::Question &question : row.questions) {
            if (question.isOpen())
                item.questions.push_back(question);
        }
        const bool monthly = item.kind != nullptr && item.kind->life.checkDays &&
                             *item.kind->life.checkDays >= daysBetweenCounts;
        item.lookAlone = item.freshness.lookDue && !(countDue && monthly);
        item.none = item.freshness.usable == 0;
        item.runsLow = !item.none && row.expected > 1 && item.freshness.usable * 2 <= row.expected;
        items.push_back(std::move(item));
    }
    return items;
}

std::vector<const catalogue::ItemKind *> toLookOver(const Family &family,
                                                    const catalogue::Catalogue &catalogue,
                                                    std::span<const catalogue::ItemUse> items,
                                                    Day today)
{
    std::vector<const catalogue::ItemKind *> kinds;
    for (const catalogue::ItemUse &use : items) {
        const catalogue::ItemKind *kind = catalogue.item(use.item);
        const auto row = std::find_if(family.items.begin(), family.items.end(),
                                      [&use](const auto &known) { return known.item == use.item; });
        if (kind == nullptr || kind->life.check.empty() || row == family.items.end())
            continue;
        const bool eachUse = kind->life.checkEachUse && !kind->tags.has(catalogue::Tag::Band);
        const bool due = eachUse || freshnessOf(*row, kind, today).lookDue;
        if (due && std::find(kinds.begin(), kinds.end(), kind) == kinds.end())
            kinds.push_back(kind);
    }
    return kinds;
}

std::vector<WeekOfUse> weeksOfUse(const store::ItemRow &row, Day today, int weeks)
{
    std::vector<WeekOfUse> list;
    const Day thisWeek = mondayOf(today);
    Day first = thisWeek;
    for (const box::Arrival &arrival : row.arrivals)
        first = std::min(first, mondayOf(arrival.day));
    const int known = (thisWeek - first) / daysOfWeek + 1;
    const int shown = std::min(weeks, known);
    for (int i = shown - 1; i >= 0; --i)
        list.push_back({thisWeek - i * daysOfWeek, 0});
    for (const box::DatedUse &use : row.uses) {
        const int ago = (thisWeek - mondayOf(use.day)) / daysOfWeek;
        if (use.day <= today && ago >= 0 && ago < shown)
            list[static_cast<std::size_t>(shown - 1 - ago)].pieces += use.pieces;
    }
    return list;
}

bool countIsDue(const Family &family, Day today)
{
    return std::any_of(family.items.begin(), family.items.end(), [today](const auto &row) {
        return row.high > 0 && today - lastCountOf(row, today) >= daysBetweenCounts;
    });
}

} // namespace lidlark::usecase
