#include "core/catalogue/field_values.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace lidlark::catalogue {

namespace {

bool isBlank(std::string_view text)
{
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

bool isPlainScalar(const YamlNode &node)
{
    return node.kind == YamlNode::Kind::Scalar && !node.quoted;
}

/// The whole of the text as a number, or nothing.
template <class Number> std::optional<Number> numberFrom(const YamlNode &node)
{
    Number value{};
    const char *end = node.text.data() + node.text.size();
    const auto [stop, error] = std::from_chars(node.text.data(), end, value);
    if (!isPlainScalar(node) || error != std::errc{} || stop != end)
        return std::nullopt;
    return value;
}

std::string choiceWords(std::span<const std::string_view> names)
{
    std::string words;
    for (const std::string_view name : names) {
        words += words.empty() ? "" : ", ";
        words += name;
    }
    return words;
}

/// "0.1", "2000".
std::string written(double number)
{
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number);
    return {text.data(), end.ptr};
}

} // namespace

std::string rangeWords(Bounds bounds)
{
    return std::to_string(bounds.low) + " to " + std::to_string(bounds.high);
}

std::string textIn(const YamlNode &node, const std::string &field, Findings &findings)
{
    if (node.kind != YamlNode::Kind::Scalar)
        findings.add(node.line, field, "must be text");
    else if (isBlank(node.text))
        findings.add(node.line, field, "must not be empty");
    return node.text;
}

int numberIn(const YamlNode &node, const std::string &field, Bounds bounds, Findings &findings)
{
    const auto value = numberFrom<int>(node);
    if (!value)
        findings.add(node.line, field, "must be a whole number");
    else if (*value < bounds.low || *value > bounds.high)
        findings.add(node.line, field, "must be " + rangeWords(bounds));
    return value.value_or(bounds.low);
}

double sizeIn(const YamlNode &node, const std::string &field, Findings &findings)
{
    const auto value = numberFrom<double>(node);
    if (!value)
        findings.add(node.line, field, "must be a number of millimetres");
    return value.value_or(1);
}

std::optional<double> amountIn(const YamlNode &node, const std::string &field, Findings &findings)
{
    const auto value = numberFrom<double>(node);
    if (value && *value > 0 && std::isfinite(*value))
        return value;
    findings.add(node.line, field, "must be a number above 0");
    return std::nullopt;
}

double millimetresIn(const YamlNode &node, const std::string &field, SizeBounds bounds,
                     Findings &findings)
{
    const auto value = numberFrom<double>(node);
    if (!value || !(*value > 0)) {
        findings.add(node.line, field, "must be a number of millimetres above 0");
        return bounds.high;
    }
    if (*value < bounds.low || *value > bounds.high)
        findings.add(node.line, field,
                     "are these millimetres? It must be " + written(bounds.low) + " to " +
                         written(bounds.high));
    return *value;
}

bool flagIn(const YamlNode &node, const std::string &field, Findings &findings)
{
    if (!isPlainScalar(node) || (node.text != "true" && node.text != "false"))
        findings.add(node.line, field, "must be true or false");
    return node.text == "true";
}

std::optional<std::size_t> wordIn(const YamlNode &node, const std::string &field,
                                  std::span<const std::string_view> names, Findings &findings)
{
    const auto name = std::find(names.begin(), names.end(), node.text);
    if (node.kind == YamlNode::Kind::Scalar && name != names.end())
        return static_cast<std::size_t>(name - names.begin());
    findings.add(node.line, field, "\"" + node.text + "\" is not one of: " + choiceWords(names));
    return std::nullopt;
}

} // namespace lidlark::catalogue
