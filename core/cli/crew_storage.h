#pragma once

#include "core/base/result.h"
#include "core/sync/storage.h"

#include <filesystem>
#include <memory>
#include <string>

namespace lidlark::cli {

/// Where a crew's files lie, and what opens it.
struct PlaceOptions {
    std::string to; ///< URL of a WebDAV folder, or a folder here.
    std::string user;
    std::string passwordFile; ///< Whose first line is the password, or the token.
    bool token = false;       ///< It is a token.
    std::string caFile;
};

/// @returns Invalid with what is wrong with the address, NotFound for a folder that is not there.
Result<std::unique_ptr<sync::Storage>> storageAt(const PlaceOptions &place);

/// The file beside a store that holds what nobody else may read.
std::filesystem::path secretsBeside(const std::string &store);

} // namespace lidlark::cli
