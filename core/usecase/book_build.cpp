#include "core/usecase/book_build.h"

#include "core/store/recording.h"
#include "core/usecase/build_sheet.h"
#include "core/usecase/clinic_word.h"

namespace lidlark::usecase {

namespace {

using workbench::KeptSupply;
using workbench::Sheet;

/// The supplies that are not as they were, as they stand on the shelf now.
std::vector<KeptSupply> changedBy(const Sheet &sheet, const std::vector<workbench::Supply> &before,
                                  const workbench::KeptSupplies &kept)
{
    const auto after = workbench::shelfAfter(before, sheet);
    std::vector<KeptSupply> changed;
    for (std::size_t i = 0; i < after.size(); ++i) {
        KeptSupply supply = kept.at(after[i].item);
        supply.supply.inStock = after[i].inStock;
        if (sheet.lines[i].bought > 0)
            supply.lot.clear();
        if (supply != kept.at(after[i].item))
            changed.push_back(std::move(supply));
    }
    return changed;
}

/// Everything in one transaction: stock that is left over of boxes that were not bought is as wrong
/// as the other way round.
Outcome say(Workplace &therapist, const workbench::BuildId &build,
            const std::vector<KeptSupply> &supplies, const workbench::Purchase &purchase)
{
    auto recording = store::Recording::begin(therapist.database, therapist.device, therapist.clock);
    if (!recording)
        return recording.error();
    Outcome said = recording->say(store::clinicLane, journal::Kind::Build,
                                  workbench::fieldsOfPurchase(build, purchase));
    for (const KeptSupply &supply : supplies) {
        if (said)
            said = recording->say(store::clinicLane, journal::Kind::Supply,
                                  workbench::fieldsOf(supply));
    }
    return said ? recording->commit() : said;
}

} // namespace

Outcome bookBuild(Workplace &therapist, const workbench::BuildId &build)
{
    if (Outcome may = mayKeepClinic(therapist); !may)
        return may;
    const auto today = store::todayOf(therapist.clock);
    const auto made = buildSheetOf(therapist, build);
    const auto kept = store::ClinicRepository(therapist.database).supplies();
    if (!today || !made || !kept)
        return !today ? today.error() : !made ? made.error() : kept.error();
    if (const auto *problems = std::get_if<workbench::BuildProblems>(&made->sheet))
        return Error{ErrorCode::Invalid, problems->front().field};
    const Sheet &sheet = std::get<Sheet>(made->sheet);
    if (made->build.boxes.empty() && workbench::isSettled(sheet))
        return Error{ErrorCode::Invalid, "boxes: none yet"};
    if (workbench::isSettled(sheet))
        return Error{ErrorCode::Invalid, "bought: all of it"};
    const auto supplies = changedBy(sheet, made->supplies, *kept);
    for (const KeptSupply &supply : supplies) {
        if (const auto problem = workbench::problemWith(supply))
            return Error{ErrorCode::Invalid, supply.supply.name + ", " + *problem};
    }
    return say(therapist, build, supplies,
               {today->day, sheet.spend, workbench::setAsideFrom(sheet)});
}

} // namespace lidlark::usecase
