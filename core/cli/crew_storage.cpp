#include "core/cli/crew_storage.h"

#include "core/cli/file_contents.h"
#include "core/sync/folder_storage.h"

#include <filesystem>

namespace lidlark::cli {

Result<std::unique_ptr<sync::Storage>> storageAt(const PlaceOptions &place)
{
    if (place.to.empty())
        return Error{ErrorCode::Invalid, "--to: where? A folder, or the URL of one"};
    std::error_code ignored;
    if (!std::filesystem::is_directory(place.to, ignored))
        return Error{ErrorCode::NotFound, "the folder " + place.to};
    return std::unique_ptr<sync::Storage>(std::make_unique<sync::FolderStorage>(place.to));
}

std::filesystem::path secretsBeside(const std::string &store)
{
    return store + ".keys";
}

} // namespace lidlark::cli
