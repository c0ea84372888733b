#include "core/usecase/say_one.h"

#include "core/store/recording.h"

namespace lidlark::usecase {

Outcome sayOne(Workplace &workplace, const journal::Lane &lane, journal::Kind kind,
               std::string fields)
{
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    if (Outcome said = recording->say(lane, kind, std::move(fields)); !said)
        return said;
    return recording->commit();
}

} // namespace lidlark::usecase
