#include "core/usecase/keep_build.h"

#include "core/child/holds_avoided.h"
#include "core/usecase/avoided_at_home.h"
#include "core/usecase/clinic_word.h"
#include "core/usecase/typed_line.h"
#include "core/workbench/box_departures.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using workbench::CallKind;
using workbench::CallOut;
using workbench::KeptBox;

constexpr std::size_t longestAlias = 40;

Outcome tidyHead(workbench::KeptBuild &build)
{
    auto name = typedLine("name", build.name, workbench::longestName);
    if (!name)
        return name.error();
    if (name->empty())
        return Error{ErrorCode::Invalid, "name: empty"};
    const bool threeCapitals =
        build.currency.size() == 3 && std::ranges::all_of(build.currency, [](char letter) {
            return letter >= 'A' && letter <= 'Z';
        });
    if (!threeCapitals)
        return Error{ErrorCode::Invalid, "currency: three capital letters"};
    if (build.sparesPercent < 0 || build.sparesPercent > workbench::mostSparesPercent)
        return Error{ErrorCode::Invalid, "spares: 0 to 100 percent"};
    build.name = *std::move(name);
    return Done{};
}

Outcome tidyBox(KeptBox &kept)
{
    auto code = boxCode(kept.box.code);
    if (!code)
        return code.error();
    kept.box.code = *std::move(code);
    auto whose = typedLine(kept.box.code + ", child", kept.box.whose, longestAlias);
    if (!whose)
        return whose.error();
    kept.box.whose = *std::move(whose);
    for (workbench::Departure &departure : kept.personal.departures) {
        auto words = typedLine(kept.box.code + ", reason", departure.words, workbench::longestName);
        if (!words)
            return words.error();
        departure.words = *std::move(words);
    }
    if (kept.box.parts.empty())
        return aboutBox(kept.box.code, "nothing in it");
    if (const auto problem = workbench::problemWith(kept.box.parts))
        return aboutBox(kept.box.code, *problem);
    return Done{};
}

/// Whose it is, as this phone calls the child, with what the homes must avoid: a box that was
/// nobody's, or another child's, is not theirs by its name alone.
Outcome nameWhose(Workplace &therapist, KeptBox &kept)
{
    auto alias = aliasOnThisPhone(therapist, kept.box.whose);
    if (!alias)
        return alias.error();
    kept.box.whose = *std::move(alias);
    const auto avoids = avoidedForBoxOf(therapist, kept.box.whose);
    if (!avoids)
        return avoids.error();
    kept.personal.avoids.insert(avoids->begin(), avoids->end());
    return Done{};
}

/// A box that is somewhere else, or was handed over as this build, is not written anew.
Outcome mayBePacked(Workplace &therapist, const workbench::BuildId &build, const std::string &code)
{
    const auto status = store::ClinicRepository(therapist.database).status(code);
    if (!status)
        return status.error();
    if (!*status)
        return Done{};
    if ((*status)->standing == workbench::Standing::Retired)
        return aboutBox(code, "used no more");
    if ((*status)->standing == workbench::Standing::Issued)
        return aboutBox(code, "still with a child");
    if ((*status)->builds.contains(build.value))
        return aboutBox(code, "was handed over as this build");
    return Done{};
}

/// Whether an item is missing or swapped because it holds what the home must avoid.
bool isForAllergy(const KeptBox &kept, const ItemId &item, const catalogue::Catalogue &catalogue)
{
    const catalogue::ItemKind *kind = catalogue.item(workbench::kindOf(item));
    return kind != nullptr && child::holdsAny(kind->tags, kept.personal.avoids);
}

/// Every departure has its reason, or the box is refused.
Outcome giveReasons(KeptBox &kept, const workbench::Design *design,
                    const catalogue::Catalogue &catalogue)
{
    for (const CallOut &call : workbench::callOutsOf(kept, design)) {
        if (call.because || call.kind == CallKind::LeftHand || call.kind == CallKind::Avoids)
            continue;
        const ItemId &item = call.kind == CallKind::Swapped ? call.insteadOf : call.item;
        if (!isForAllergy(kept, item, catalogue))
            return aboutBox(kept.box.code, item.value + ": say why it differs");
        kept.personal.departures.push_back({item, workbench::Why::Allergy, {}});
    }
    return Done{};
}

} // namespace

Result<workbench::BuildId> startBuild(Workplace &therapist, workbench::KeptBuild build)
{
    if (Outcome tidied = tidyHead(build); !tidied)
        return tidied.error();
    build.id = {therapist.entropy.freshId()};
    const Outcome said = sayInClinic(therapist, Kind::Build, workbench::fieldsOfHead(build));
    if (!said)
        return said.error();
    return build.id;
}

Outcome changeBuild(Workplace &therapist, workbench::KeptBuild build)
{
    const auto known = store::ClinicRepository(therapist.database).build(build.id);
    if (!known)
        return known.error();
    if (!*known)
        return Error{ErrorCode::NotFound, "this build"};
    if (Outcome tidied = tidyHead(build); !tidied)
        return tidied;
    return sayInClinic(therapist, Kind::Build, workbench::fieldsOfHead(build));
}

Result<std::vector<store::BuildRow>> keptBuilds(Workplace &therapist)
{
    return store::ClinicRepository(therapist.database).builds();
}

Outcome keepBox(Workplace &therapist, const workbench::BuildId &id, KeptBox box)
{
    store::ClinicRepository clinic(therapist.database);
    const auto build = clinic.build(id);
    const auto designs = clinic.designs();
    const auto supplies = clinic.supplies();
    if (!build || !designs || !supplies)
        return !build ? build.error() : !designs ? designs.error() : supplies.error();
    if (!*build)
        return Error{ErrorCode::NotFound, "this build"};
    if (Outcome tidied = tidyBox(box); !tidied)
        return tidied;
    if (Outcome named = nameWhose(therapist, box); !named)
        return named;
    const auto design = designs->find(box.box.design);
    if (!box.box.design.empty() && design == designs->end())
        return Error{ErrorCode::NotFound, "this design"};
    if (Outcome may = mayBePacked(therapist, id, box.box.code); !may)
        return may;
    const workbench::Design *usual = design != designs->end() ? &design->second : nullptr;
    if (Outcome given = giveReasons(box, usual, therapist.catalogue); !given)
        return given;
    if (const auto conflict = workbench::conflictIn(box, therapist.catalogue, *supplies))
        return aboutBox(box.box.code, *conflict);
    if ((*build)->build.boxes.size() >= workbench::mostBoxes)
        return Error{ErrorCode::Invalid, "boxes: more than 10000"};
    return sayInClinic(therapist, Kind::Build, workbench::fieldsOfBox(id, box));
}

Outcome keepBoxes(Workplace &therapist, const workbench::BuildId &build,
                  const std::vector<KeptBox> &boxes)
{
    for (const KeptBox &box : boxes) {
        if (Outcome kept = keepBox(therapist, build, box); !kept)
            return kept;
    }
    return Done{};
}

Outcome dropBox(Workplace &therapist, const workbench::BuildId &id, const std::string &code)
{
    const auto build = store::ClinicRepository(therapist.database).build(id);
    if (!build)
        return build.error();
    if (!*build || (*build)->build.box(code) == nullptr)
        return Error{ErrorCode::NotFound, "this box"};
    return sayInClinic(therapist, Kind::Build, workbench::fieldsOfBoxRemoval(id, code));
}

} // namespace lidlark::usecase
