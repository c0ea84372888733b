#include "core/store/rights.h"

#include <algorithm>
#include <array>

namespace lidlark::store {

namespace {

using journal::Kind;

constexpr std::array guestKinds{Kind::Met,      Kind::Outcome,      Kind::Exception, Kind::Found,
                                Kind::Opened,   Kind::FloorChecked, Kind::LeftOpen,  Kind::Checked,
                                Kind::Hygiene,  Kind::PlayStarted,  Kind::PlayEnded, Kind::Reaction,
                                Kind::TakenBack};

} // namespace

bool guestMaySay(Kind kind)
{
    return std::find(guestKinds.begin(), guestKinds.end(), kind) != guestKinds.end();
}

bool accessEnded(const Device &device, Day today)
{
    return device.role == Role::Guest && device.until && today > *device.until;
}

Outcome maySay(const Device &device, Kind kind, Day today)
{
    // What a phone holds is no act of its person, and never late.
    if (device.role != Role::Guest || kind == Kind::Met)
        return Done{};
    if (accessEnded(device, today))
        return Error{ErrorCode::AccessEnded, toText(*device.until)};
    if (!guestMaySay(kind))
        return Error{ErrorCode::NotAllowed, std::string(journal::kindNames.of(kind))};
    return Done{};
}

} // namespace lidlark::store
