#include "mobile/bridge/print_pages.h"

#include <QRegularExpression>

#include "core/store/box_repository.h"
#include "core/store/shared_copies.h"
#include "core/sync/consent.h"
#include "core/usecase/avoided_at_home.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

Result<workbench::BuildId> buildMeant(Household &household, const QString &build)
{
    if (build.isEmpty())
        return usecase::buildToPack(household.workplace());
    return workbench::BuildId{toCore(build)};
}

} // namespace

Result<usecase::LidListPage> lidListPage(Household &household)
{
    const auto family = household.family();
    if (!family)
        return family.error();
    const auto avoided = usecase::avoidedAtHomesOf(household.workplace(), *family);
    if (!avoided)
        return avoided.error();
    return usecase::lidListPageOf(*family, household.catalogue(), *avoided);
}

Result<usecase::LabelPage> labelPage(Household &household)
{
    const auto family = household.family();
    if (!family)
        return family.error();
    return usecase::labelPageOf(household.workplace(), *family);
}

Result<std::vector<usecase::LabelPage>> labelPages(Household &household)
{
    const auto boxes = store::BoxRepository(household.workplace().database).boxes();
    if (!boxes)
        return boxes.error();
    std::vector<usecase::LabelPage> pages;
    for (const store::BoxRow &box : *boxes) {
        const auto family = usecase::loadFamily(household.workplace(), box.alias);
        if (!family)
            return family.error();
        auto page = usecase::labelPageOf(household.workplace(), *family);
        if (!page)
            return page.error();
        pages.push_back(*std::move(page));
    }
    std::ranges::stable_sort(pages, {}, &usecase::LabelPage::name);
    return pages;
}

Result<usecase::TravelPage> travelPage(Household &household, const QString &language)
{
    const auto family = household.family();
    if (!family)
        return family.error();
    return usecase::travelPageOf(*family, household.catalogueIn(language), household.today().day);
}

Result<usecase::TallyPage> tallyPage(Household &household, int weeksOn)
{
    const auto family = household.family();
    if (!family)
        return family.error();
    const auto avoided = usecase::avoidedAtHomesOf(household.workplace(), *family);
    if (!avoided)
        return avoided.error();
    return usecase::tallyPageOf(*family, household.catalogue(), *avoided, household.today().day,
                                weeksOn);
}

Result<usecase::RestockPage> restockPage(Household &household)
{
    return usecase::restockPageOf(household.workplace());
}

Result<usecase::BuildSheetPage> buildSheetPage(Household &household, const QString &build)
{
    const auto id = buildMeant(household, build);
    return id ? usecase::buildSheetPageOf(household.workplace(), *id)
              : Result<usecase::BuildSheetPage>(id.error());
}

Result<usecase::PackListPage> packListPage(Household &household, const QString &build)
{
    const auto id = buildMeant(household, build);
    return id ? usecase::packListPageOf(household.workplace(), *id)
              : Result<usecase::PackListPage>(id.error());
}

QString buildFileWords(Household &household, const QString &build)
{
    const auto id = buildMeant(household, build);
    const auto table = id ? usecase::packTable(household.workplace(), *id)
                          : Result<usecase::PackTable>(id.error());
    if (!table)
        return {};
    QString words = fromCore(toText(table->build.day));
    if (!table->boxes.empty())
        words += u' ' + fromCore(table->boxes.front().code);
    static const QRegularExpression noFileName(QStringLiteral("[^\\w .-]"));
    return words.replace(noFileName, QStringLiteral("-"));
}

std::optional<YesToShare> yesToShare(Household &household)
{
    if (!household.isOpen())
        return std::nullopt;
    const auto consent = sync::consentIn(household.workplace().database);
    if (!consent || !*consent)
        return std::nullopt;
    return YesToShare{(*consent)->person, (*consent)->day};
}

Result<usecase::SummaryPage> toldByFamily(Household &household, usecase::Family family)
{
    const Day today = household.today().day;
    auto shared = store::sharedPlays(household.workplace().database, family.box.child,
                                     today - usecase::summaryDays);
    if (!shared)
        return shared.error();
    family.plays = *std::move(shared);
    // Nothing shared is nothing told: "none" would read as if nobody had played.
    const bool any = !family.plays.empty();
    return usecase::summaryPageOf(family, household.catalogue(), today, any);
}

Result<Summary> summaryPage(Household &household, bool tellPlays)
{
    auto family = household.family();
    if (!family)
        return family.error();
    if (household.therapist()) { // what families share is shared for such a page
        const auto told = toldByFamily(household, *family);
        return told ? Result<Summary>(Summary{*told, std::nullopt}) : told.error();
    }
    // What is in the home's lane is the home's to tell.
    const bool theirs = !household.guest();
    const std::optional<YesToShare> yes =
        tellPlays && theirs ? yesToShare(household) : std::nullopt;
    return Summary{usecase::summaryPageOf(*family, household.catalogue(), household.today().day,
                                          yes.has_value()),
                   yes};
}

} // namespace lidlark::mobile
