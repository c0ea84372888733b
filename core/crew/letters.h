#pragma once

#include "core/base/id.h"

#include <nlohmann/json.hpp>

#include <map>
#include <optional>
#include <string>

namespace lidlark::crew {

/// Letters by device, as they stand in an event: in hexadecimal.
using Letters = std::map<DeviceId, std::string>;

nlohmann::json jsonOf(const Letters &letters);
/// @returns nothing for anything else.
std::optional<Letters> lettersIn(const nlohmann::json &json, const std::string &name);

} // namespace lidlark::crew
