#include "core/usecase/build_sheet.h"

#include "core/store/clinic_repository.h"

#include <set>

namespace lidlark::usecase {

namespace {

std::vector<workbench::Supply> suppliesFor(const workbench::KeptBuild &build,
                                           const workbench::SetAside &aside,
                                           const workbench::KeptSupplies &kept)
{
    std::vector<workbench::Supply> supplies;
    std::set<ItemId> met;
    const auto meet = [&](const ItemId &item) {
        const auto supply = kept.find(item);
        if (met.insert(item).second && supply != kept.end())
            supplies.push_back(supply->second.supply);
    };
    for (const workbench::KeptBox &box : build.boxes) {
        for (const workbench::BoxPart &part : box.box.parts)
            meet(part.item);
    }
    for (const auto &[item, pieces] : aside) {
        if (pieces > 0)
            meet(item);
    }
    return supplies;
}

} // namespace

Result<BuildSheet> buildSheetOf(Workplace &therapist, const workbench::BuildId &build)
{
    store::ClinicRepository clinic(therapist.database);
    auto packed = clinic.build(build);
    const auto kept = clinic.supplies();
    if (!packed || !kept)
        return !packed ? packed.error() : kept.error();
    if (!*packed)
        return Error{ErrorCode::NotFound, "this build"};
    BuildSheet made{std::move((*packed)->build), {}, {}, workbench::BuildProblems{}};
    made.aside = workbench::setAsideBy(made.build.purchases);
    made.supplies = suppliesFor(made.build, made.aside, *kept);
    made.sheet = workbench::sheetOf(made.build.build(), made.supplies, made.aside);
    return made;
}

Result<workbench::OrProblems<workbench::OneMoreBox>>
moreBoxesIn(Workplace &therapist, const workbench::BuildId &id,
            const std::vector<workbench::KeptBox> &boxes)
{
    store::ClinicRepository clinic(therapist.database);
    const auto packed = clinic.build(id);
    const auto kept = clinic.supplies();
    if (!packed || !kept)
        return !packed ? packed.error() : kept.error();
    if (!*packed)
        return Error{ErrorCode::NotFound, "this build"};
    workbench::KeptBuild larger = (*packed)->build;
    larger.boxes.insert(larger.boxes.end(), boxes.begin(), boxes.end());
    std::vector<workbench::BuildBox> more;
    for (const workbench::KeptBox &box : boxes)
        more.push_back(box.box);
    const auto aside = workbench::setAsideBy(larger.purchases);
    return workbench::moreBoxes((*packed)->build.build(), suppliesFor(larger, aside, *kept), more,
                                aside);
}

} // namespace lidlark::usecase
