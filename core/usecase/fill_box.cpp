#include "core/usecase/fill_box.h"

#include "core/safety/room.h"
#include "core/store/clinic_repository.h"
#include "core/store/recording.h"
#include "core/usecase/avoided_at_home.h"
#include "core/usecase/clinic_word.h"

#include <algorithm>
#include <set>

namespace lidlark::usecase {

namespace {

using workbench::KeptBox;

Result<workbench::Design> designOf(Workplace &therapist, const workbench::DesignId &id)
{
    const auto designs = store::ClinicRepository(therapist.database).designs();
    if (!designs)
        return designs.error();
    const auto found = designs->find(id);
    return found != designs->end() ? Result<workbench::Design>(found->second)
                                   : Error{ErrorCode::NotFound, "this design"};
}

Result<workbench::KeptBuild> buildOf(Workplace &therapist, const workbench::BuildId &id)
{
    const auto build = store::ClinicRepository(therapist.database).build(id);
    if (!build)
        return build.error();
    return *build ? Result<workbench::KeptBuild>((*build)->build)
                  : Error{ErrorCode::NotFound, "this build"};
}

/// Somebody mouths in one of the homes to which the box goes.
Result<bool> isMouthedIn(Workplace &therapist, const Family &family)
{
    const auto today = store::todayOf(therapist.clock);
    const auto sheets = sheetsOfHomesOf(therapist, family);
    if (!today || !sheets)
        return !today ? today.error() : sheets.error();
    return std::ranges::any_of(*sheets, [&](const child::HomeSheet &sheet) {
        return safety::companyOfHome(&sheet, family.child, today->day).mouther;
    });
}

/// @param empty a box for @p kept: its code, whose it is, and its design's id.
Result<KeptBox> fittedFor(Workplace &therapist, const workbench::KeptBuild &kept,
                          const KeptBox &empty, const workbench::Design &kind)
{
    const std::string &child = empty.box.whose;
    const auto family = loadFamily(therapist, child);
    if (!family)
        return family.error();
    const auto theirs = std::ranges::find_if(kept.boxes, [&](const KeptBox &box) {
        return box.box.whose == child && box.box.code != empty.box.code;
    });
    if (theirs != kept.boxes.end())
        return aboutBox(theirs->box.code, "is for that child already");
    auto avoids = avoidedAtHomesOf(therapist, *family);
    const auto mouther = isMouthedIn(therapist, *family);
    if (!avoids || !mouther)
        return !avoids ? avoids.error() : mouther.error();
    return workbench::fittedBox(empty, kind, {*std::move(avoids), *mouther}, therapist.catalogue);
}

} // namespace

Result<std::vector<std::string>> freeCodes(Workplace &therapist, const workbench::BuildId &id,
                                           int count)
{
    const auto build = buildOf(therapist, id);
    const auto others = store::ClinicRepository(therapist.database).boxes();
    if (!build || !others)
        return !build ? build.error() : others.error();
    std::set<std::string> taken;
    for (const KeptBox &box : build->boxes)
        taken.insert(box.box.code);
    for (const auto &[code, standing] : *others)
        taken.insert(code);
    std::vector<std::string> codes;
    for (int number = 1; static_cast<int>(codes.size()) < count; ++number) {
        std::string code = "K" + std::to_string(number);
        if (!taken.contains(code))
            codes.push_back(std::move(code));
    }
    return codes;
}

Result<std::vector<KeptBox>> boxesForChildren(Workplace &therapist, const workbench::BuildId &build,
                                              const workbench::DesignId &design,
                                              const std::vector<std::string> &children)
{
    const auto kind = designOf(therapist, design);
    const auto kept = buildOf(therapist, build);
    const auto codes = freeCodes(therapist, build, static_cast<int>(children.size()));
    if (!kind || !kept || !codes)
        return !kind ? kind.error() : !kept ? kept.error() : codes.error();
    std::vector<KeptBox> boxes;
    for (const std::string &child : children) {
        auto box =
            fittedFor(therapist, *kept, {{(*codes)[boxes.size()], child, design, {}}, {}}, *kind);
        if (!box)
            return box.error();
        boxes.push_back(*std::move(box));
    }
    return boxes;
}

Result<KeptBox> boxForChild(Workplace &therapist, const workbench::BuildId &build,
                            const workbench::DesignId &design, const std::string &childAlias)
{
    auto boxes = boxesForChildren(therapist, build, design, {childAlias});
    return boxes ? Result<KeptBox>(std::move(boxes->front())) : boxes.error();
}

Result<KeptBox> refilledFor(Workplace &therapist, const workbench::BuildId &build,
                            const KeptBox &box, const std::string &childAlias)
{
    const auto kind = designOf(therapist, box.box.design);
    const auto kept = buildOf(therapist, build);
    const auto supplies = store::ClinicRepository(therapist.database).supplies();
    if (!kind || !kept || !supplies)
        return !kind ? kind.error() : !kept ? kept.error() : supplies.error();
    auto filled =
        fittedFor(therapist, *kept, {{box.box.code, childAlias, box.box.design, {}}, {}}, *kind);
    if (filled)
        workbench::fitHand(*filled, box.personal.hand, *supplies, therapist.catalogue);
    return filled;
}

Result<std::vector<KeptBox>> boxesForNobody(Workplace &therapist, const workbench::BuildId &build,
                                            const workbench::DesignId &design, int count)
{
    const auto kind = designOf(therapist, design);
    const auto codes = freeCodes(therapist, build, count);
    if (!kind || !codes)
        return !kind ? kind.error() : codes.error();
    std::vector<KeptBox> boxes;
    for (const std::string &code : *codes)
        boxes.push_back({{code, {}, design, kind->parts}, {}, false});
    return boxes;
}

} // namespace lidlark::usecase
