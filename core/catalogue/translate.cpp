#include "core/catalogue/translation.h"

#include "core/catalogue/file_record.h"
#include "core/catalogue/read_translation.h"
#include "core/catalogue/record_reader.h"

#include <algorithm>
#include <iterator>

namespace lidlark::catalogue {

namespace {

constexpr std::string_view itemsFile = "items";

template <class Entry>
void replace(std::vector<Entry> &entries, const Entry &english, Entry translated)
{
    const auto place = std::find_if(entries.begin(), entries.end(),
                                    [&](const Entry &entry) { return entry.id == english.id; });
    *place = std::move(translated);
}

/// Takes the translations into the catalogue one by one, the sound ones only.
class Translating
{
public:
    explicit Translating(const Catalogue &english)
        : m_english(english), m_items(english.items()), m_activities(english.activities())
    {
    }

    void readActivity(const SourceFile &file)
    {
        Findings findings(file.name);
        const Activity *english = m_english.activity({stemOf(file.name)});
        if (english == nullptr)
            findings.add(0, "id", "there is no sound activity \"" + stemOf(file.name) + "\"");
        else
            readRecord(file, findings, [&](const YamlNode &record) {
                Activity translated = readActivityTranslation(record, *english, findings);
                if (findings.empty())
                    replace(m_activities, *english, std::move(translated));
            });
        report(findings);
    }

    void readItems(const SourceFile &file)
    {
        Findings findings(file.name);
        readRecord(file, findings, [&](const YamlNode &top) {
            RecordReader record(top, {}, findings);
            const WordsOrigin origin = readWordsOrigin(record, "of_items");
            record.record("items");
            record.finish();
            if (findings.empty())
                readEach(top, origin, file, findings);
        });
        report(findings);
    }

    [[nodiscard]] Catalogue take()
    {
        return {std::move(m_items), std::move(m_activities), m_english.problems(),
                std::move(m_problems)};
    }

private:
    /// One item with a fault does not keep the others from being translated.
    void readEach(const YamlNode &top, WordsOrigin origin, const SourceFile &file,
                  Findings &findings)
    {
        const auto items =
            std::find_if(top.children.begin(), top.children.end(),
                         [](const YamlNode &field) { return field.key == itemsFile; });
        for (const YamlNode &node : items->children) {
            const std::string path = "items." + node.key;
            const ItemKind *english = m_english.item({node.key});
            if (english == nullptr)
                findings.add(node.keyLine, path, "there is no sound item of this name");
            else if (node.kind != YamlNode::Kind::Map)
                findings.add(node.line, path, "must be a group of named fields");
            else
                readItem(node, path, origin, file, *english);
        }
    }

    void readItem(const YamlNode &node, const std::string &path, WordsOrigin origin,
                  const SourceFile &file, const ItemKind &english)
    {
        Findings findings(file.name);
        ItemKind translated = readItemTranslation(node, path, origin, english, findings);
        if (findings.empty())
            replace(m_items, english, std::move(translated));
        report(findings);
    }

    void report(Findings &findings)
    {
        std::vector<Problem> found = findings.take();
        m_problems.insert(m_problems.end(), std::make_move_iterator(found.begin()),
                          std::make_move_iterator(found.end()));
    }

    const Catalogue &m_english;
    std::vector<ItemKind> m_items;
    std::vector<Activity> m_activities;
    std::vector<Problem> m_problems;
};

} // namespace

Catalogue translate(const Catalogue &english, std::span<const SourceFile> files)
{
    Translating translating(english);
    for (const SourceFile &file : files) {
        if (stemOf(file.name) == itemsFile)
            translating.readItems(file);
        else
            translating.readActivity(file);
    }
    return translating.take();
}

} // namespace lidlark::catalogue
