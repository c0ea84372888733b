#include "core/catalogue/catalogue.h"

#include "core/catalogue/check_activity.h"
#include "core/catalogue/file_record.h"
#include "core/catalogue/read_activity.h"
#include "core/catalogue/read_item.h"

#include <iterator>
#include <map>

namespace lidlark::catalogue {

namespace {

bool isPlainId(std::string_view id)
{
    return !id.empty() &&
           id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string_view::npos;
}

void checkId(const std::string &id, const std::string &file, Findings &findings)
{
    if (!isPlainId(id))
        findings.addAt("id", "must be lower-case letters, digits and hyphens");
    else if (id != stemOf(file))
        findings.addAt("id", "must be the file's name, \"" + stemOf(file) + "\"");
}

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

void checkSwapTarget(const ItemKind &item, const std::map<ItemId, ItemKind> &items,
                     Findings &findings)
{
    if (item.swap && !items.contains(item.swap->with))
        findings.addAt("swap.with", "there is no sound item \"" + item.swap->with.value + "\"");
}

} // namespace

Catalogue load(std::span<const SourceFile> items, std::span<const SourceFile> activities)
{
    std::vector<Problem> problems;
    Shelf<ItemKind> itemShelf(problems);
    for (const SourceFile &file : items)
        itemShelf.put(file, readItem);
    // An item that falls may have been the swap of another.
    while (itemShelf.drop([&itemShelf](const ItemKind &item, Findings &findings) {
        checkSwapTarget(item, itemShelf.entries(), findings);
    })) {
    }

    Shelf<Activity> activityShelf(problems);
    for (const SourceFile &file : activities)
        activityShelf.put(file, readActivity);
    std::map<std::string, ActivityId> byNumber;
    activityShelf.drop([&](const Activity &activity, Findings &findings) {
        checkActivity(activity, itemShelf.entries(), findings);
        const auto [holder, isNew] = byNumber.emplace(activity.entry, activity.id);
        if (!isNew)
            findings.addAt("entry", "is the number of " + holder->second.value + " already");
    });
    return {itemShelf.take(), activityShelf.take(), std::move(problems)};
}

} // namespace lidlark::catalogue
