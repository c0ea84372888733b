#include "print_job.h"

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/box_label_print.h"
#include "mobile/prints/build_sheet_print.h"
#include "mobile/prints/kite_card.h"
#include "mobile/prints/label_print.h"
#include "mobile/prints/lid_list_print.h"
#include "mobile/prints/pack_list_print.h"
#include "mobile/prints/restock_print.h"
#include "mobile/prints/summary_print.h"
#include "mobile/prints/tally_print.h"
#include "mobile/prints/travel_print.h"

#include <algorithm>
#include <iterator>

namespace lidlark::mobile {

namespace {

PrintLanguages languagesOf(Household &household, const PrintWish &wish)
{
    PrintLanguages languages;
    for (const QString &code : wish.languages)
        languages.emplace_back(code, household.catalogueIn(code));
    if (languages.empty())
        languages.emplace_back(household.language(), household.catalogue());
    return languages;
}

/// Of a large sheet two halves are cut; a small one is the card itself.
QSize lidCardOn(Paper paper)
{
    const QSize sheet = sizeOf(paper);
    const bool large = paper == Paper::A4 || paper == Paper::Letter;
    return large ? QSize(sheet.height() / 2, sheet.width()) : sheet;
}

template <class Page, class Paint> Result<PrintPages> painted(const Result<Page> &page, Paint paint)
{
    if (!page)
        return page.error();
    return PrintPages(paint(*page));
}

Result<PrintPages> lidList(Household &household, const PrintWish &wish)
{
    return painted(lidListPage(household), [&](const usecase::LidListPage &list) {
        const PrintLanguages languages = languagesOf(household, wish);
        const QSize card = lidCardOn(wish.paper);
        PrintPages cards = lidListPrint(list, languages, card);
        std::ranges::move(boxLabelPrint(list, languages, card, wish.labels),
                          std::back_inserter(cards));
        return onSheets(cards, sizeOf(wish.paper), true);
    });
}

Result<PrintPages> labels(Household &household, const PrintWish &wish)
{
    const bool all = wish.what == Print::Labels;
    std::vector<usecase::LabelPage> values;
    if (all) {
        auto every = labelPages(household);
        if (!every)
            return every.error();
        values = *std::move(every);
    } else {
        auto one = labelPage(household);
        if (!one)
            return one.error();
        values.push_back(*std::move(one));
    }
    PrintPages cards;
    for (const usecase::LabelPage &label : values)
        cards.push_back(labelPrint(label, languagesOf(household, wish)));
    return onSheets(cards, sizeOf(wish.paper), !all);
}

} // namespace

QList<Paper> papersFor(Print what)
{
    switch (what) {
    case Print::LidList:
        return {Paper::A5, Paper::A6, Paper::A4, Paper::Letter};
    case Print::KiteCard:
    case Print::Label:
    case Print::Labels:
        return {Paper::A4, Paper::Letter, Paper::A5, Paper::A6};
    case Print::Summary:
        return {Paper::A4, Paper::Letter, Paper::A5};
    case Print::Tally:
    case Print::Travel:
    case Print::Restock:
    case Print::PackList:
    case Print::BuildSheet:
        break; // smaller, and their words could not be read
    }
    return {Paper::A4, Paper::Letter};
}

int mostLanguages(Print what)
{
    switch (what) {
    case Print::LidList:
    case Print::Label:
    case Print::Labels:
        return 2;
    case Print::KiteCard:
        return 0;
    default:
        break;
    }
    return 1;
}

bool isForTherapist(Print what)
{
    return what == Print::Label || what == Print::Labels || what == Print::Restock ||
           isOfBuild(what);
}

bool isOfBuild(Print what)
{
    return what == Print::PackList || what == Print::BuildSheet;
}

bool isForGuest(Print what)
{
    return what == Print::LidList || what == Print::Travel || what == Print::KiteCard;
}

Result<PrintPages> pagesOf(Household &household, const PrintWish &wish)
{
    const QSize size = sizeOf(wish.paper);
    const PrintLanguages languages = languagesOf(household, wish);
    const PrintLanguage &in = languages.front();
    switch (wish.what) {
    case Print::LidList:
        return lidList(household, wish);
    case Print::Label:
    case Print::Labels:
        return labels(household, wish);
    case Print::KiteCard:
        return onSheets(kitecard::pages(), size, true);
    case Print::Travel:
        return painted(travelPage(household, in.tongue().language().code),
                       [&](const auto &page) { return PrintPages{travelPrint(page, in, size)}; });
    case Print::Tally:
        return painted(tallyPage(household, wish.weeksOn),
                       [&](const auto &page) { return PrintPages{tallyPrint(page, in, size)}; });
    case Print::Summary:
        return painted(summaryPage(household, wish.tellPlays),
                       [&](const auto &page) { return PrintPages{summaryPrint(page, in, size)}; });
    case Print::PackList:
        return painted(packListPage(household, wish.build), [&](const auto &page) {
            return packListPrint(page, wish.byItem, in, size);
        });
    case Print::BuildSheet:
        return painted(buildSheetPage(household, wish.build),
                       [&](const auto &page) { return buildSheetPrint(page, in, size); });
    case Print::Restock:
        break;
    }
    return painted(restockPage(household),
                   [&](const auto &page) { return restockPrint(page, in, size); });
}

} // namespace lidlark::mobile
