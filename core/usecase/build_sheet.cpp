#include "core/usecase/build_sheet.h"

#include "core/store/clinic_repository.h"

#include <set>

namespace lidlark::usecase {

namespace {

std::vector<workbench::Supply> suppliesFor(const workbench::KeptBuild &build,
                                           const workbench::KeptSupplies &kept)
{
    std::vector<workbench::Supply> supplies;
    std::set<ItemId> met;
    for (const workbench::KeptBox &box : build.boxes) {
        for (const workbench::BoxPart &part : box.box.parts) {
            const auto supply = kept.find(part.item);
            if (met.insert(part.item).second && supply != kept.end())
                supplies.push_back(supply->second.supply);
        }
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
    BuildSheet made{std::move((*packed)->build), {}, workbench::BuildProblems{}};
    made.supplies = suppliesFor(made.build, *kept);
    made.sheet = workbench::sheetOf(made.build.build(), made.supplies);
    return made;
}

} // namespace lidlark::usecase
