#include "mobile/bridge/shared_lines.h"

#include "core/wording/summary_words.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/bridge/sentence.h"

namespace lidlark::mobile {

namespace {

QString lineOf(const Household &household, const usecase::PlayedActivity &played)
{
    const auto *activity = household.catalogue().activity(played.activity);
    return translated(wording::playedWords(activity, played.activity, played.noticed));
}

} // namespace

QStringList sharedLines(Household &household)
{
    const auto family = household.family();
    if (!family)
        return {};
    const auto page = toldByFamily(household, *family);
    if (!page)
        return {};
    QStringList lines;
    for (const usecase::PlayedActivity &played : page->played)
        lines.append(lineOf(household, played));
    lines.sort(Qt::CaseInsensitive); // the latest first would say when
    if (page->morePlayed)
        lines.append(translated(wording::andOthers()));
    return lines;
}

} // namespace lidlark::mobile
