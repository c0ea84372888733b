#include "core/store/rights.h"

#include "core/crew/rights.h"

namespace lidlark::store {

bool accessEnded(const Device &device, Day today)
{
    return device.role == Role::Guest && device.until && today > *device.until;
}

Outcome maySay(const Device &device, journal::Kind kind, Day today)
{
    // What a phone holds is no act of its person, and never late.
    if (device.role != Role::Guest || kind == journal::Kind::Met)
        return Done{};
    if (accessEnded(device, today))
        return Error{ErrorCode::AccessEnded, toText(*device.until)};
    if (!crew::guestMaySay(kind))
        return Error{ErrorCode::NotAllowed, std::string(journal::kindNames.of(kind))};
    return Done{};
}

} // namespace lidlark::store
