#include "core/catalogue/catalogue.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

template <class Entry, class Id> const Entry *find(const std::vector<Entry> &entries, const Id &id)
{
    const auto entry =
        std::lower_bound(entries.begin(), entries.end(), id,
                         [](const Entry &candidate, const Id &key) { return candidate.id < key; });
    return entry != entries.end() && entry->id == id ? &*entry : nullptr;
}

} // namespace

std::string Problem::text() const
{
    std::string words = file + ":";
    if (line > 0)
        words += std::to_string(line) + ":";
    if (!field.empty())
        words += " " + field + ":";
    return words + " " + reason;
}

Catalogue::Catalogue(std::vector<ItemKind> items, std::vector<Activity> activities,
                     std::vector<Problem> problems, std::vector<Problem> untranslated)
    : m_items(std::move(items)), m_activities(std::move(activities)),
      m_problems(std::move(problems)), m_untranslated(std::move(untranslated))
{
}

const ItemKind *Catalogue::item(const ItemId &id) const
{
    return find(m_items, id);
}

const Activity *Catalogue::activity(const ActivityId &id) const
{
    return find(m_activities, id);
}

} // namespace lidlark::catalogue
