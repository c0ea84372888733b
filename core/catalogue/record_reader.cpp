#include "core/catalogue/record_reader.h"

#include <algorithm>
#include <charconv>

namespace lidlark::catalogue {

namespace {

bool isBlank(std::string_view text)
{
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

/// The whole of @p text as a number, or nothing.
template <class Number> std::optional<Number> numberFrom(const YamlNode &node)
{
    Number value{};
    const char *end = node.text.data() + node.text.size();
    const auto [stop, error] = std::from_chars(node.text.data(), end, value);
    if (node.quoted || node.kind != YamlNode::Kind::Scalar || error != std::errc{} || stop != end)
        return std::nullopt;
    return value;
}

std::string rangeWords(Bounds bounds)
{
    return std::to_string(bounds.low) + " to " + std::to_string(bounds.high);
}

std::string lineOfList(const std::string &path, std::size_t index)
{
    return path + "[" + std::to_string(index + 1) + "]";
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

} // namespace

RecordReader::RecordReader(const YamlNode &record, std::string path, Findings &findings)
    : m_record(&record), m_path(std::move(path)), m_findings(&findings)
{
    if (!m_path.empty())
        m_findings->place(m_path, record.line);
    std::set<std::string_view> seen;
    for (const YamlNode &field : record.children) {
        if (!seen.insert(field.key).second)
            m_findings->add(field.keyLine, fieldPath(field.key), "is written twice");
    }
}

bool RecordReader::has(std::string_view key) const
{
    return find(key) != nullptr;
}

std::string RecordReader::text(std::string_view key)
{
    const YamlNode *node = required(key);
    return node ? textOf(*node, fieldPath(key)) : std::string();
}

std::string RecordReader::optionalText(std::string_view key)
{
    const YamlNode *node = asked(key);
    return node ? textOf(*node, fieldPath(key)) : std::string();
}

int RecordReader::number(std::string_view key, Bounds bounds)
{
    const YamlNode *node = required(key);
    return node ? numberOf(*node, fieldPath(key), bounds) : bounds.low;
}

std::optional<int> RecordReader::optionalNumber(std::string_view key, Bounds bounds)
{
    const YamlNode *node = asked(key);
    if (!node)
        return std::nullopt;
    return numberOf(*node, fieldPath(key), bounds);
}

bool RecordReader::flag(std::string_view key)
{
    const YamlNode *node = required(key);
    return node && flagOf(*node, fieldPath(key));
}

bool RecordReader::optionalFlag(std::string_view key)
{
    const YamlNode *node = asked(key);
    return node && flagOf(*node, fieldPath(key));
}

std::vector<std::string> RecordReader::texts(std::string_view key, Bounds count)
{
    std::vector<std::string> values;
    if (const YamlNode *node = list(key, count)) {
        for (const YamlNode &line : node->children)
            values.push_back(textOf(line, lineOfList(fieldPath(key), values.size())));
    }
    return values;
}

std::vector<double> RecordReader::measures(std::string_view key, Bounds count)
{
    std::vector<double> values;
    const YamlNode *node = list(key, count);
    if (!node)
        return values;
    for (const YamlNode &line : node->children) {
        const auto value = numberFrom<double>(line);
        if (!value || !(*value > 0) || *value > 10'000)
            m_findings->add(line.line, lineOfList(fieldPath(key), values.size()),
                            "must be a number of millimetres above 0");
        values.push_back(value.value_or(1));
    }
    return values;
}

std::vector<RecordReader> RecordReader::records(std::string_view key, Bounds count)
{
    std::vector<RecordReader> readers;
    const YamlNode *node = list(key, count);
    if (!node)
        return readers;
    std::size_t index = 0;
    for (const YamlNode &line : node->children) {
        const std::string path = lineOfList(fieldPath(key), index++);
        if (line.kind == YamlNode::Kind::Map)
            readers.emplace_back(line, path, *m_findings);
        else
            m_findings->add(line.line, path, "must be a group of named fields");
    }
    return readers;
}

std::optional<RecordReader> RecordReader::record(std::string_view key)
{
    const YamlNode *node = required(key);
    if (!node)
        return std::nullopt;
    if (node->kind != YamlNode::Kind::Map) {
        m_findings->add(node->line, fieldPath(key), "must be a group of named fields");
        return std::nullopt;
    }
    return RecordReader(*node, fieldPath(key), *m_findings);
}

std::string RecordReader::fieldPath(std::string_view key) const
{
    return m_path.empty() ? std::string(key) : m_path + "." + std::string(key);
}

void RecordReader::complain(std::string_view key, std::string reason)
{
    m_findings->addAt(fieldPath(key), std::move(reason));
}

void RecordReader::finish()
{
    for (const YamlNode &field : m_record->children) {
        if (!m_asked.contains(field.key))
            m_findings->add(field.keyLine, fieldPath(field.key), "is not a field known here");
    }
}

const YamlNode *RecordReader::find(std::string_view key) const
{
    const auto field =
        std::find_if(m_record->children.begin(), m_record->children.end(),
                     [key](const YamlNode &candidate) { return candidate.key == key; });
    return field == m_record->children.end() ? nullptr : &*field;
}

const YamlNode *RecordReader::asked(std::string_view key)
{
    m_asked.emplace(key);
    const YamlNode *node = find(key);
    if (node)
        m_findings->place(fieldPath(key), node->keyLine);
    return node;
}

const YamlNode *RecordReader::required(std::string_view key)
{
    const YamlNode *node = asked(key);
    if (!node)
        m_findings->add(m_record->line, fieldPath(key), "is missing");
    return node;
}

const YamlNode *RecordReader::list(std::string_view key, Bounds count)
{
    const YamlNode *node = required(key);
    if (!node)
        return nullptr;
    if (node->kind != YamlNode::Kind::List) {
        m_findings->add(node->line, fieldPath(key), "must be a list");
        return nullptr;
    }
    const auto lines = static_cast<int>(node->children.size());
    if (lines < count.low || lines > count.high)
        m_findings->add(node->line, fieldPath(key),
                        "must have " + rangeWords(count) + " lines, not " + std::to_string(lines));
    return node;
}

std::string RecordReader::textOf(const YamlNode &node, const std::string &path)
{
    if (node.kind != YamlNode::Kind::Scalar)
        m_findings->add(node.line, path, "must be text");
    else if (isBlank(node.text))
        m_findings->add(node.line, path, "must not be empty");
    return node.text;
}

int RecordReader::numberOf(const YamlNode &node, const std::string &path, Bounds bounds)
{
    const auto value = numberFrom<int>(node);
    if (!value)
        m_findings->add(node.line, path, "must be a whole number");
    else if (*value < bounds.low || *value > bounds.high)
        m_findings->add(node.line, path, "must be " + rangeWords(bounds));
    return value.value_or(bounds.low);
}

bool RecordReader::flagOf(const YamlNode &node, const std::string &path)
{
    const bool plain = node.kind == YamlNode::Kind::Scalar && !node.quoted;
    if (!plain || (node.text != "true" && node.text != "false"))
        m_findings->add(node.line, path, "must be true or false");
    return node.text == "true";
}

std::optional<std::size_t> RecordReader::indexOf(const YamlNode &node, const std::string &path,
                                                 std::span<const std::string_view> names)
{
    const auto name = std::find(names.begin(), names.end(), node.text);
    if (node.kind == YamlNode::Kind::Scalar && name != names.end())
        return static_cast<std::size_t>(name - names.begin());
    m_findings->add(node.line, path, "\"" + node.text + "\" is not one of: " + choiceWords(names));
    return std::nullopt;
}

std::vector<std::size_t>
RecordReader::indexes(std::string_view key, std::span<const std::string_view> names, Bounds count)
{
    std::vector<std::size_t> found;
    const YamlNode *node = list(key, count);
    if (!node)
        return found;
    std::size_t line = 0;
    for (const YamlNode &word : node->children) {
        const std::string path = lineOfList(fieldPath(key), line++);
        const auto index = indexOf(word, path, names);
        if (index && std::find(found.begin(), found.end(), *index) != found.end())
            m_findings->add(word.line, path, "\"" + word.text + "\" is written twice");
        else if (index)
            found.push_back(*index);
    }
    return found;
}

} // namespace lidlark::catalogue
