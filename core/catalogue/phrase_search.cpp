#include "core/catalogue/phrase_search.h"

#include <algorithm>
#include <cctype>

namespace lidlark::catalogue {

namespace {

bool wordGoesOn(std::string_view text, std::size_t at)
{
    return at < text.size() && std::isalnum(static_cast<unsigned char>(text[at])) != 0;
}

} // namespace

std::string folded(std::string_view text)
{
    std::string lower(text);
    std::transform(lower.begin(), lower.end(), lower.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return lower;
}

bool hasPhrase(std::string_view text, std::string_view phrase)
{
    const bool beginning = phrase.ends_with('*');
    if (beginning)
        phrase.remove_suffix(1);
    for (std::size_t at = text.find(phrase); at != std::string_view::npos;
         at = text.find(phrase, at + 1)) {
        const std::size_t end = at + phrase.size();
        const bool plural = end < text.size() && text[end] == 's' && !wordGoesOn(text, end + 1);
        if ((at == 0 || !wordGoesOn(text, at - 1)) &&
            (beginning || plural || !wordGoesOn(text, end)))
            return true;
    }
    return false;
}

std::string shown(std::string_view phrase)
{
    return std::string(phrase.substr(0, phrase.find('*')));
}

} // namespace lidlark::catalogue
