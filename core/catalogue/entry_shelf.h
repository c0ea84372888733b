#pragma once

#include "core/catalogue/activity.h"
#include "core/catalogue/file_record.h"

#include <iterator>
#include <map>

namespace lidlark::catalogue {

/// Ids and names of drawings: small letters, digits and hyphens alone.
bool isPlainId(std::string_view id);

/// The id is plain, and the file's name.
void checkId(const std::string &id, const std::string &file, Findings &findings);

/// Reads files one by one and keeps the sound ones. Whatever a file makes the reader throw stays
/// inside that file.
template <class Entry> class Shelf
{
public:
    using Key = decltype(Entry::id);

    explicit Shelf(std::vector<Problem> &problems) : m_problems(problems) {}

    template <class Read> void put(const SourceFile &file, Read &&read)
    {
        Findings findings(file.name);
        readRecord(file, findings,
                   [&](const YamlNode &record) { keep(read(record, findings), file, findings); });
        report(findings);
    }

    /// One that passed these checks before, as it is. @param file as messages name it.
    void hold(Entry entry, const std::string &file)
    {
        m_findings.insert_or_assign(entry.id, Findings(file));
        m_entries.insert_or_assign(entry.id, std::move(entry));
    }

    [[nodiscard]] const std::map<Key, Entry> &entries() const { return m_entries; }

    /// Takes out every entry for which @p check has findings.
    template <class Check> bool drop(Check &&check)
    {
        bool dropped = false;
        for (auto entry = m_entries.begin(); entry != m_entries.end();) {
            Findings &findings = m_findings.at(entry->first);
            check(entry->second, findings);
            if (findings.empty()) {
                ++entry;
                continue;
            }
            report(findings);
            entry = m_entries.erase(entry);
            dropped = true;
        }
        return dropped;
    }

    [[nodiscard]] std::vector<Entry> take()
    {
        std::vector<Entry> sorted;
        sorted.reserve(m_entries.size());
        for (auto &[id, entry] : m_entries)
            sorted.push_back(std::move(entry));
        return sorted;
    }

private:
    void keep(Entry entry, const SourceFile &file, Findings &findings)
    {
        if (!entry.id.empty())
            checkId(entry.id.value, file.name, findings);
        if (m_entries.contains(entry.id))
            findings.addAt("id", "another file has this id already");
        if (!findings.empty())
            return;
        m_findings.insert_or_assign(entry.id, findings);
        m_entries.emplace(entry.id, std::move(entry));
    }

    void report(Findings &findings)
    {
        std::vector<Problem> found = findings.take();
        m_problems.insert(m_problems.end(), std::make_move_iterator(found.begin()),
                          std::make_move_iterator(found.end()));
    }

    std::map<Key, Entry> m_entries;
    std::map<Key, Findings> m_findings; ///< Empty, but they know where each field stands.
    std::vector<Problem> &m_problems;
};

using ItemShelf = Shelf<ItemKind>;
using ActivityShelf = Shelf<Activity>;

/// Takes out every item whose swap is not there, until each one's is.
void dropUnsound(ItemShelf &items);
/// Takes out every activity that says what does not go with its items, or has another's number.
void dropUnsound(ActivityShelf &activities, const ItemShelf &items);

} // namespace lidlark::catalogue
