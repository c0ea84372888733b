#pragma once

#include <optional>
#include <set>
#include <string>

namespace lidlark::arrows {

/// The project's own file, or folder when @p target is one, that the file at @p path means by
/// @p target; nothing when it means somebody else's.
/// @param known the paths of all files of the project; a name is looked up there first beside
///              @p path, then from the root, then by its last part in any folder of mobile/ or
///              tests/, since each module puts its own folder on the include path.
std::optional<std::string> ownFile(const std::string &path, const std::string &target,
                                   const std::set<std::string> &known);

} // namespace lidlark::arrows
