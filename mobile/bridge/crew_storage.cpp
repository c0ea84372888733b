#include "mobile/bridge/crew_storage.h"

#include "core/sync/folder_storage.h"

#include <filesystem>

namespace lidlark::mobile {

bool isOnServer(const std::string &address)
{
    return !address.empty() && !std::filesystem::path(address).is_absolute();
}

Result<std::unique_ptr<sync::Storage>> storageFor(const sync::CrewPlace &place)
{
    if (isOnServer(place.address))
        return Error{ErrorCode::Invalid, "the shared place: no folder of this phone"};
    std::error_code ignored;
    if (!std::filesystem::is_directory(place.address, ignored))
        return Error{ErrorCode::NotFound, "the folder " + place.address};
    return std::unique_ptr<sync::Storage>(std::make_unique<sync::FolderStorage>(place.address));
}

} // namespace lidlark::mobile
