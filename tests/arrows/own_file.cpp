#include "tests/arrows/own_file.h"

#include <algorithm>
#include <filesystem>

namespace lidlark::arrows {

std::optional<std::string> ownFile(const std::string &path, const std::string &target,
                                   const std::set<std::string> &known)
{
    const auto isThere = [&known](const std::string &name) {
        const auto at = known.lower_bound(name);
        return at != known.end() && (*at == name || at->starts_with(name + "/"));
    };
    const auto here = std::filesystem::path(path).parent_path();
    const std::string beside = (here / target).lexically_normal().generic_string();
    if (isThere(beside))
        return beside;
    if (isThere(target))
        return target;
    const auto endsSo = [&target](const std::string &name) {
        return !name.starts_with("core/") && name.ends_with("/" + target);
    };
    const auto elsewhere = std::ranges::find_if(known, endsSo);
    return elsewhere == known.end() ? std::nullopt : std::optional(*elsewhere);
}

} // namespace lidlark::arrows
