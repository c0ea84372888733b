#pragma once

#include "core/base/enum_names.h"
#include "core/catalogue/tag.h"
#include "core/measure/solid.h"

#include <array>
#include <charconv>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::catalogue {

/// A text in double quotes. Source: YAML 1.2.2, 7.3.1 (double-quoted style) and 5.7 (escapes).
inline std::string quoted(std::string_view text)
{
    std::string out = "\"";
    for (const char letter : text) {
        if (letter == '"' || letter == '\\')
            out += '\\';
        if (letter == '\n')
            out += "\\n";
        else if (letter == '\r')
            out += "\\r";
        else if (letter == '\t')
            out += "\\t";
        else
            out += letter;
    }
    return out + '"';
}

/// "name: value", a line of its own.
inline std::string yamlField(std::string_view name, const std::string &value)
{
    return std::string(name) + ": " + value + "\n";
}

/// "[a, b]" of what @p write makes of each.
template <class List, class Write> std::string yamlList(const List &list, Write &&write)
{
    std::string out;
    for (const auto &entry : list)
        out += (out.empty() ? "" : ", ") + write(entry);
    return "[" + out + "]";
}

inline std::string yamlTexts(const std::vector<std::string> &texts)
{
    return yamlList(texts, [](const std::string &text) { return quoted(text); });
}

template <class Enum, std::size_t Count>
std::string yamlWords(const std::vector<Enum> &values, const EnumNames<Enum, Count> &names)
{
    return yamlList(values, [&names](Enum value) { return std::string(names.of(value)); });
}

inline std::string yamlTags(TagSet tags)
{
    return yamlWords(tags.list(), tagNames);
}

inline std::string yamlFlag(bool yes)
{
    return yes ? "true" : "false";
}

/// The shortest that is read as the same number, without an exponent.
inline std::string yamlNumber(double number)
{
    std::array<char, 400> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    return {text.data(), end.ptr};
}

/// "shape: sphere, mm: [20]".
inline std::string yamlSolid(const measure::Solid &solid)
{
    const auto &sizes = solid.sizes();
    std::vector<double> mm(sizes.begin(), sizes.end());
    if (solid.shape() == measure::Shape::Sphere)
        mm = {sizes[0]};
    else if (solid.shape() == measure::Shape::Cylinder)
        mm = {sizes[0], sizes[2]};
    return "shape: " + std::string(measure::shapeNames.of(solid.shape())) +
           ", mm: " + yamlList(mm, yamlNumber);
}

} // namespace lidlark::catalogue
