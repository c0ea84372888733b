#include "core/usecase/keep_design.h"

#include "core/usecase/clinic_word.h"
#include "core/usecase/typed_line.h"

namespace lidlark::usecase {

Result<workbench::DesignId> keepDesign(Workplace &therapist, workbench::Design design)
{
    auto name = typedLine("name", design.name, 80);
    if (!name)
        return name.error();
    design.name = *std::move(name);
    if (const auto problem = workbench::problemWith(design))
        return Error{ErrorCode::Invalid, *problem};
    if (design.id.empty())
        design.id = {therapist.entropy.freshId()};
    const Outcome said = sayInClinic(therapist, journal::Kind::Design, workbench::fieldsOf(design));
    if (!said)
        return said.error();
    return design.id;
}

Result<workbench::Designs> keptDesigns(Workplace &therapist)
{
    return store::ClinicRepository(therapist.database).designs();
}

Outcome removeDesign(Workplace &therapist, const workbench::DesignId &id)
{
    const auto designs = store::ClinicRepository(therapist.database).designs();
    if (!designs)
        return designs.error();
    if (!designs->contains(id))
        return Error{ErrorCode::NotFound, "this design"};
    return sayInClinic(therapist, journal::Kind::Design, workbench::fieldsOfDesignRemoval(id));
}

} // namespace lidlark::usecase
