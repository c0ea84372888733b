#include "core/catalogue/record_reader.h"

#include "core/measure/solid.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

std::string lineOfList(const std::string &path, std::size_t index)
{
    return path + "[" + std::to_string(index + 1) + "]";
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
    return node ? textIn(*node, fieldPath(key), *m_findings) : std::string();
}

std::string RecordReader::optionalText(std::string_view key)
{
    const YamlNode *node = asked(key);
    return node ? textIn(*node, fieldPath(key), *m_findings) : std::string();
}

int RecordReader::number(std::string_view key, Bounds bounds)
{
    const YamlNode *node = required(key);
    return node ? numberIn(*node, fieldPath(key), bounds, *m_findings) : bounds.low;
}

std::optional<int> RecordReader::optionalNumber(std::string_view key, Bounds bounds)
{
    const YamlNode *node = asked(key);
    if (!node)
        return std::nullopt;
    return numberIn(*node, fieldPath(key), bounds, *m_findings);
}

bool RecordReader::flag(std::string_view key)
{
    const YamlNode *node = required(key);
    return node && flagIn(*node, fieldPath(key), *m_findings);
}

bool RecordReader::optionalFlag(std::string_view key)
{
    const YamlNode *node = asked(key);
    return node && flagIn(*node, fieldPath(key), *m_findings);
}

std::vector<std::string> RecordReader::texts(std::string_view key, Bounds count)
{
    std::vector<std::string> values;
    if (const YamlNode *node = list(key, count)) {
        for (const YamlNode &line : node->children)
            values.push_back(textIn(line, lineOfList(fieldPath(key), values.size()), *m_findings));
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
        values.push_back(sizeIn(line, lineOfList(fieldPath(key), values.size()), *m_findings));
    }
    return values;
}

std::optional<double> RecordReader::amount(std::string_view key)
{
    const YamlNode *node = required(key);
    return node ? amountIn(*node, fieldPath(key), *m_findings) : std::nullopt;
}

double RecordReader::millimetres(std::string_view key)
{
    const YamlNode *node = required(key);
    return node ? millimetresIn(*node, fieldPath(key), {measure::leastMm, measure::mostMm},
                                *m_findings)
                : 1;
}

double RecordReader::optionalMillimetres(std::string_view key)
{
    return has(key) ? millimetres(key) : 0;
}

double RecordReader::thickness(std::string_view key)
{
    const YamlNode *node = required(key);
    return node ? millimetresIn(*node, fieldPath(key), {0.001, 10}, *m_findings) : 1;
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
        const auto index = wordIn(word, path, names, *m_findings);
        if (index && std::find(found.begin(), found.end(), *index) != found.end())
            m_findings->add(word.line, path, "\"" + word.text + "\" is written twice");
        else if (index)
            found.push_back(*index);
    }
    return found;
}

} // namespace lidlark::catalogue
