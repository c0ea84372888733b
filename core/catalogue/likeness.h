#pragma once

#include <array>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::catalogue {

/// A line taken apart for comparing it: lower case, without punctuation.
struct BareLine {
    std::vector<std::string> words;
    std::set<std::array<std::string, 3>> runs; ///< Every three words that follow one another.
};

BareLine bareLine(std::string_view text);

/// How alike two lines read: the share of the shorter one's runs of three words that the other has
/// too, 0 to 1. Lines of fewer than five words have too few runs to judge: 1 when they are the same
/// and else 0.
double likeness(const BareLine &one, const BareLine &other);

} // namespace lidlark::catalogue
