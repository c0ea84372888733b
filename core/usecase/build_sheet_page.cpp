#include "core/usecase/build_sheet_page.h"

#include "core/store/clinic_repository.h"
#include "core/workbench/boxes_alike.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

BuildSheetLine lineOf(const workbench::SheetLine &reckoned, const workbench::Supply &supply)
{
    BuildSheetLine line{
        reckoned.item,  reckoned.need.pieces, reckoned.need.spares, reckoned.inStock, {},
        reckoned.spend, reckoned.leftover};
    for (std::size_t i = 0; i < reckoned.packs.size(); ++i) {
        const workbench::PackOffer &offer = supply.offers[i];
        if (reckoned.packs[i] > 0)
            line.packs.push_back(
                {offer.shop, offer.pieces, reckoned.packs[i], {offer.pence.value_or(0)}});
    }
    return line;
}

BoxesAlike kindOfBox(const workbench::BuildBox &box, const workbench::BoxCost &cost,
                     const workbench::Designs &designs)
{
    BoxesAlike kind{{}, {}, {}, cost.material, cost.unpriced};
    if (const auto design = designs.find(box.design); design != designs.end()) {
        kind.design = design->second.name;
        kind.differences = workbench::differencesFrom(design->second, box.parts);
    }
    return kind;
}

std::vector<BoxesAlike> kindsOf(const workbench::KeptBuild &build, const workbench::Sheet &sheet,
                                const workbench::Designs &designs)
{
    std::vector<BoxesAlike> kinds;
    for (const auto &alike : workbench::boxesAlike(build.boxes)) {
        kinds.push_back(
            kindOfBox(build.boxes[alike.front()].box, sheet.boxes[alike.front()], designs));
        for (const std::size_t box : alike)
            kinds.back().codes.push_back(build.boxes[box].box.code);
    }
    std::ranges::stable_sort(kinds, [](const BoxesAlike &a, const BoxesAlike &b) {
        return a.codes.size() > b.codes.size();
    });
    return kinds;
}

} // namespace

Result<BuildSheetPage> buildSheetPageOf(Workplace &therapist, const workbench::BuildId &build)
{
    const auto reckoned = buildSheetOf(therapist, build);
    const auto designs = store::ClinicRepository(therapist.database).designs();
    if (!reckoned || !designs)
        return !reckoned ? reckoned.error() : designs.error();
    BuildSheetPage page;
    page.name = reckoned->build.name;
    page.day = reckoned->build.day;
    page.currency = reckoned->build.currency;
    page.boxes = static_cast<int>(reckoned->build.boxes.size());
    for (const workbench::Supply &supply : reckoned->supplies)
        page.names[supply.item] = supply.name;
    if (const auto *problems = std::get_if<workbench::BuildProblems>(&reckoned->sheet)) {
        page.problems = *problems;
        return page;
    }
    const auto &sheet = std::get<workbench::Sheet>(reckoned->sheet);
    for (std::size_t i = 0; i < sheet.lines.size(); ++i)
        page.lines.push_back(lineOf(sheet.lines[i], reckoned->supplies[i]));
    page.spend = sheet.spend;
    page.kinds = kindsOf(reckoned->build, sheet, *designs);
    return page;
}

} // namespace lidlark::usecase
