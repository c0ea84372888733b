#include "mobile/bridge/shared_lines.h"

#include "core/wording/catalogue_terms.h"
#include "core/wording/line_words.h"
#include "core/wording/play_words.h"
#include "core/wording/summary_words.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/bridge/sentence.h"

namespace lidlark::mobile {

namespace {

QString lineOf(const Household &household, const usecase::PlayedActivity &played)
{
    const auto *activity = household.catalogue().activity(played.activity);
    std::vector<wording::Argument> said{
        activity != nullptr
            ? wording::termOf(*activity, activity->name, catalogue::inEnglish(*activity).name)
            : wording::Argument(played.activity.value)};
    for (const play::Phrase phrase : played.noticed)
        said.emplace_back(wording::phraseWords(phrase));
    return translated(wording::asSentence(std::move(said)));
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
