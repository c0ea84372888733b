#include "core/catalogue/likeness.h"

#include <algorithm>
#include <cctype>

namespace lidlark::catalogue {

namespace {

std::vector<std::string> bareWords(std::string_view text)
{
    std::vector<std::string> words;
    bool inside = false;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (std::isspace(byte) != 0) {
            inside = false;
        } else if (std::isalnum(byte) != 0) {
            if (!inside)
                words.emplace_back();
            words.back() += static_cast<char>(std::tolower(byte));
            inside = true;
        }
    }
    return words;
}

} // namespace

BareLine bareLine(std::string_view text)
{
    BareLine line{bareWords(text), {}};
    for (std::size_t i = 0; i + 2 < line.words.size(); ++i)
        line.runs.insert({line.words[i], line.words[i + 1], line.words[i + 2]});
    return line;
}

double likeness(const BareLine &one, const BareLine &other)
{
    constexpr std::size_t fewestWords = 5;
    if (one.words == other.words)
        return 1;
    if (std::min(one.words.size(), other.words.size()) < fewestWords)
        return 0;
    const auto shared = std::count_if(one.runs.begin(), one.runs.end(), [&other](const auto &run) {
        return other.runs.contains(run);
    });
    return static_cast<double>(shared) /
           static_cast<double>(std::min(one.runs.size(), other.runs.size()));
}

} // namespace lidlark::catalogue
