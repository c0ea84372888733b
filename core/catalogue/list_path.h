#pragma once

#include <string>
#include <string_view>

namespace lidlark::catalogue {

/// "items[2].item" for the field "item" of the second line (index 1) of the list "items".
inline std::string lineOf(std::string_view list, std::size_t index, std::string_view field)
{
    std::string path(list);
    path += '[';
    path += std::to_string(index + 1);
    path += "].";
    path += field;
    return path;
}

} // namespace lidlark::catalogue
