#include "core/catalogue/care_about.h"

#include "core/catalogue/translation.h"

#include <algorithm>

namespace lidlark::catalogue {

std::optional<std::size_t> careAbout(const ItemKind &kind, std::string_view substance)
{
    const std::vector<std::string> &care = inEnglish(kind).care;
    const auto line = std::ranges::find_if(care, [substance](const std::string &words) {
        return words.find(substance) != std::string::npos;
    });
    if (line == care.end())
        return std::nullopt;
    return static_cast<std::size_t>(line - care.begin());
}

} // namespace lidlark::catalogue
