#pragma once

#include "core/base/yaml_tree.h"
#include "core/catalogue/findings.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// What one field of a catalogue file may hold. Each function reads a value; a value that is none
/// of its kind, or out of bounds, becomes a finding at @p field and a harmless value.
namespace lidlark::catalogue {

/// Inclusive bounds of a number, or of how many lines a list may have.
struct Bounds {
    int low = 0;
    int high = 0;
};

/// "1 to 3".
std::string rangeWords(Bounds bounds);

/// Text that is more than spaces.
std::string textIn(const YamlNode &node, const std::string &field, Findings &findings);
/// A whole number without quotes.
int numberIn(const YamlNode &node, const std::string &field, Bounds bounds, Findings &findings);
/// A number as it is written, of whatever size.
double sizeIn(const YamlNode &node, const std::string &field, Findings &findings);
/// A number above 0 without quotes; nothing (and a finding) for anything else.
std::optional<double> amountIn(const YamlNode &node, const std::string &field, Findings &findings);
/// Inclusive bounds of a size, mm.
struct SizeBounds {
    double low = 0;
    double high = 0;
};

/// A size within @p bounds; what lies outside is a slip of units more often than a thing to play
/// with.
double millimetresIn(const YamlNode &node, const std::string &field, SizeBounds bounds,
                     Findings &findings);
/// `true` or `false` without quotes; the many other words of old YAML are refused.
bool flagIn(const YamlNode &node, const std::string &field, Findings &findings);
/// @returns the place of the word among @p names, or nothing (and a finding).
std::optional<std::size_t> wordIn(const YamlNode &node, const std::string &field,
                                  std::span<const std::string_view> names, Findings &findings);

} // namespace lidlark::catalogue
