#pragma once

#include "core/base/id.h"

#include <functional>
#include <string>

namespace lidlark::workbench {

/// The id of a thing that gets its first name: "Box with lid" is "box-with-lid", "box-with-lid-2"
/// where that one is taken. Letters that no id can hold are left out; of a name in another script
/// nothing stays, and it is "thing".
/// @returns small letters, digits and hyphens, at most 40.
ItemId newItemId(const std::string &name, const std::function<bool(const ItemId &)> &taken);

} // namespace lidlark::workbench
