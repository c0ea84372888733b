#include "core/sync/kept_place.h"

#include "core/store/device_repository.h"

namespace lidlark::sync {

namespace {

constexpr auto addressKey = "crew.place";
constexpr auto userKey = "crew.user";

/// A keychain is the phone's, and a phone may hold several families.
std::string passwordName(const std::string &address)
{
    return "place." + address;
}

} // namespace

Result<std::string> addressIn(store::Database &database)
{
    const auto address = store::DeviceRepository(database).localState(addressKey);
    if (!address)
        return address.error();
    return address->value_or("");
}

Result<std::optional<CrewPlace>> placeIn(store::Database &database, SecretKeeper &keeper)
{
    const auto address = addressIn(database);
    const auto user = store::DeviceRepository(database).localState(userKey);
    if (!address || !user)
        return address ? user.error() : address.error();
    if (address->empty())
        return std::optional<CrewPlace>();
    CrewPlace place{*address, user->value_or(""), ""};
    if (place.user.empty())
        return std::optional(place);
    const auto password = keeper.read(passwordName(place.address));
    if (!password)
        return password.error();
    place.password = password->value_or("");
    return std::optional(place);
}

Outcome keepPlace(store::Database &database, SecretKeeper &keeper, const CrewPlace &place)
{
    if (place.address.empty())
        return Error{ErrorCode::Invalid, "the shared place: no address"};
    // The password first: an address without it would be knocked at in vain.
    if (!place.user.empty()) {
        if (Outcome kept = keeper.keep(passwordName(place.address), place.password); !kept)
            return kept;
    }
    store::DeviceRepository local(database);
    if (Outcome kept = local.setLocalState(userKey, place.user); !kept)
        return kept;
    return local.setLocalState(addressKey, place.address);
}

Outcome forgetPlace(store::Database &database, SecretKeeper &keeper)
{
    const auto address = addressIn(database);
    if (!address)
        return address.error();
    store::DeviceRepository local(database);
    if (Outcome gone = local.clearLocalState(addressKey); !gone)
        return gone;
    if (Outcome gone = local.clearLocalState(userKey); !gone)
        return gone;
    return address->empty() ? Outcome(Done{}) : keeper.forget(passwordName(*address));
}

} // namespace lidlark::sync
