#pragma once

#include "core/base/enum_names.h"
#include "core/catalogue/field_values.h"

#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::catalogue {

/// Reads one record (a map of named fields) of a catalogue file field by field. Whatever is
/// missing, of the wrong type or out of bounds becomes a finding with its line, and the field gets
/// a harmless value, so that one reading names every mistake. Call `finish` last: names never asked
/// for are findings too.
class RecordReader
{
public:
    /// @param record must be a map and outlive the reader. @param path "" for the whole file.
    RecordReader(const YamlNode &record, std::string path, Findings &findings);

    [[nodiscard]] bool has(std::string_view key) const;
    /// Text that is more than spaces.
    std::string text(std::string_view key);
    /// Empty when the field is not there.
    std::string optionalText(std::string_view key);
    int number(std::string_view key, Bounds bounds);
    std::optional<int> optionalNumber(std::string_view key, Bounds bounds);
    bool flag(std::string_view key);
    /// False when the field is not there.
    bool optionalFlag(std::string_view key);
    std::vector<std::string> texts(std::string_view key, Bounds count);
    /// Sizes as written; what they may be is judged by the solid they make.
    std::vector<double> measures(std::string_view key, Bounds count);
    /// A required number above 0; nothing (and a finding) for anything else.
    std::optional<double> amount(std::string_view key);
    /// One size, measure::leastMm to measure::mostMm.
    double millimetres(std::string_view key);
    /// 0 when the field is not there.
    double optionalMillimetres(std::string_view key);
    /// A thickness of film, 0.001 to 10 mm.
    double thickness(std::string_view key);
    std::vector<RecordReader> records(std::string_view key, Bounds count);
    /// A required record; nothing (and a finding) when it is missing or no record.
    std::optional<RecordReader> record(std::string_view key);

    template <class Enum, std::size_t Count>
    Enum word(std::string_view key, const EnumNames<Enum, Count> &names)
    {
        const YamlNode *node = required(key);
        const auto index =
            node ? wordIn(*node, fieldPath(key), names.names, *m_findings) : std::nullopt;
        return static_cast<Enum>(index.value_or(0));
    }
    /// Words in the order written; one that comes twice is a finding.
    template <class Enum, std::size_t Count>
    std::vector<Enum> words(std::string_view key, const EnumNames<Enum, Count> &names, Bounds count)
    {
        std::vector<Enum> values;
        for (const std::size_t index : indexes(key, names.names, count))
            values.push_back(static_cast<Enum>(index));
        return values;
    }

    /// "items[2].item" for the key "item" of the second line of `items`.
    [[nodiscard]] std::string fieldPath(std::string_view key) const;
    /// A finding at a field of this record.
    void complain(std::string_view key, std::string reason);
    void finish();

private:
    const YamlNode *find(std::string_view key) const;
    const YamlNode *asked(std::string_view key);
    const YamlNode *required(std::string_view key);
    const YamlNode *list(std::string_view key, Bounds count);
    std::vector<std::size_t> indexes(std::string_view key, std::span<const std::string_view> names,
                                     Bounds count);

    const YamlNode *m_record;
    std::string m_path;
    Findings *m_findings;
    std::set<std::string, std::less<>> m_asked;
};

} // namespace lidlark::catalogue
