#include "core/usecase/summary_page.h"

#include "core/box/box_code.h"
#include "core/usecase/box_items.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

void addPhrases(const play::Play &play, PlayedActivity &played)
{
    for (const play::Phrase phrase : play.phrases) {
        if (std::ranges::find(played.noticed, phrase) == played.noticed.end())
            played.noticed.push_back(phrase);
    }
}

void addPlays(const Family &family, SummaryPage &page)
{
    for (const play::Play &play : family.plays) { // newest first
        if (play.when.day < page.since)
            continue;
        auto known = std::ranges::find(page.played, play.activity, &PlayedActivity::activity);
        if (known == page.played.end()) {
            if (std::ssize(page.played) == mostPlayed) {
                page.morePlayed = true;
                continue;
            }
            page.played.push_back({play.activity, {}});
            known = page.played.end() - 1;
        }
        addPhrases(play, *known);
    }
}

/// The oldest of the last counts; nothing while one item has never been counted.
std::optional<Day> wholeCountedOf(const Family &family)
{
    std::optional<Day> oldest;
    for (const store::ItemRow &row : family.items) {
        if (row.expected == 0)
            continue;
        if (!row.counted)
            return std::nullopt;
        oldest = oldest ? std::min(*oldest, *row.counted) : *row.counted;
    }
    return oldest;
}

BoxTold healthOf(const Family &family, const catalogue::Catalogue &catalogue, Day today)
{
    BoxTold health;
    for (const BoxItem &item : boxItemsOf(family, catalogue, today)) {
        if (item.row.expected == 0 || isToTakeOut(family, item.row.item))
            continue;
        ++health.kinds;
        if (!item.questions.empty())
            health.open.push_back(item.row.item);
        if (item.none)
            health.none.push_back(item.row.item);
        else if (item.runsLow)
            health.low.push_back(item.row.item);
        if (item.request && item.request->isOpen())
            health.asked.push_back(item.row.item);
    }
    health.pieceMissing = !family.losses.empty();
    health.wholeCounted = wholeCountedOf(family);
    return health;
}

} // namespace

SummaryPage summaryPageOf(const Family &family, const catalogue::Catalogue &catalogue, Day today,
                          bool tellPlays)
{
    SummaryPage page;
    page.child = family.box.alias;
    page.code = box::boxCode(family.box.id);
    page.revision = family.revision ? family.revision->revision.number : 0;
    page.day = today;
    page.since = today - summaryDays;
    page.playsTold = tellPlays;
    if (tellPlays)
        addPlays(family, page);
    page.goals.assign(family.child.goals.begin(),
                      family.child.goals.begin() + static_cast<std::ptrdiff_t>(std::min(
                                                       family.child.goals.size(), mostGoals)));
    page.box = healthOf(family, catalogue, today);
    return page;
}

} // namespace lidlark::usecase
