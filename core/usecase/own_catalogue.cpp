#include "core/usecase/own_catalogue.h"

#include "core/store/box_repository.h"
#include "core/store/clinic_rows.h"
#include "core/store/subjects_of.h"
#include "core/usecase/own_entries.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace lidlark::usecase {

namespace {

using workbench::OwnEntry;
using workbench::OwnSort;
using workbench::OwnText;

/// What is left of one that was not read: that something is said of it.
OwnEntry unread(const std::string &subject)
{
    const std::string id = subject.substr(std::string_view(workbench::ownEntryPrefix).size());
    OwnEntry entry{id, OwnSort::Item, {}, {}, false, true};
    return entry;
}

/// Puts the entries of one box into files, and of the others what has to have a name.
class Gathering
{
public:
    void add(const OwnEntry &entry)
    {
        if (entry.sort == OwnSort::Activity) {
            if (!entry.known.text.empty()) // else withdrawn before this phone knew of it
                m_activities.insert_or_assign(entry.id, entry.known);
            if (entry.isOffered())
                m_offered.insert(entry.id);
            return;
        }
        if (entry.unsettled && entry.standing.empty())
            m_doubtful.insert({entry.id});
        std::vector<OwnText> texts = entry.standing;
        // A thing of the therapist's own keeps its name and tags: it may still lie in a box.
        if (texts.empty() && catalogue::isOwnId(entry.id) && !entry.known.text.empty())
            texts.push_back(entry.known);
        if (!texts.empty())
            m_items.insert_or_assign(entry.id, std::move(texts));
    }

    /// Of another box: known and never offered, where this one says nothing of it.
    void addNames(const OwnEntry &entry)
    {
        if (!catalogue::isOwnId(entry.id) || entry.known.text.empty())
            return;
        if (entry.sort == OwnSort::Activity)
            addHigher(m_others, entry);
        else
            addHigher(m_otherItems, entry);
    }

    /// On the therapist's desk, where no box has it.
    void addKept(const workbench::OwnKept &kept)
    {
        if (kept.sort == OwnSort::Item && kept.signedOff && catalogue::isOwnId(kept.id))
            m_otherItems.emplace(kept.id, OwnText{kept.text, 1, {}});
    }

    [[nodiscard]] catalogue::OwnFiles files() &&
    {
        catalogue::OwnFiles files;
        files.doubtful = std::move(m_doubtful);
        for (const auto &[id, text] : m_otherItems)
            m_items.emplace(id, std::vector<OwnText>{text});
        m_activities.merge(m_others);
        for (const auto &[id, texts] : m_items) {
            for (const OwnText &text : texts)
                files.items.push_back({"items/" + id + ".yaml", text.text});
        }
        for (const auto &[id, text] : m_activities) {
            files.activities.push_back({"activities/" + id + ".yaml", text.text});
            if (!m_offered.contains(id))
                files.withdrawn.insert({id});
        }
        return files;
    }

private:
    using Texts = std::map<std::string, OwnText>;

    static void addHigher(Texts &texts, const OwnEntry &entry)
    {
        const auto [known, isNew] = texts.emplace(entry.id, entry.known);
        const OwnText &old = known->second;
        if (!isNew &&
            std::tie(old.version, old.text) < std::tie(entry.known.version, entry.known.text))
            known->second = entry.known;
    }

    std::map<std::string, std::vector<OwnText>> m_items;
    Texts m_activities;
    Texts m_others;
    Texts m_otherItems;
    std::set<std::string> m_offered;
    std::set<ItemId> m_doubtful;
};

} // namespace

Result<std::vector<OwnEntry>> ownEntriesOf(Workplace &workplace, const BoxId &box)
{
    const journal::Lane lane{journal::LaneKind::Box, box.value};
    store::EventRepository repository(workplace.database);
    std::vector<OwnEntry> entries;
    const auto subjects = store::subjectsOf(workplace.database, lane, workbench::ownEntryPrefix);
    if (!subjects || subjects->empty()) // most boxes have none, and nothing is read for them
        return subjects ? Result<std::vector<OwnEntry>>(entries) : subjects.error();
    const auto mets = repository.standingOfSubject({lane, "met"});
    if (!mets)
        return mets.error();
    const journal::Seen seen(*mets);
    for (std::size_t i = 0; i < subjects->size(); ++i) {
        if (i >= mostOwnEntries) {
            entries.push_back(unread((*subjects)[i].subject));
            continue;
        }
        const auto events = repository.standingOfSubject((*subjects)[i]);
        if (!events)
            return events.error();
        std::ranges::move(workbench::foldOwnEntries(*events, seen), std::back_inserter(entries));
    }
    std::ranges::stable_sort(entries, {}, &OwnEntry::sort);
    return entries;
}

Result<catalogue::OwnFiles> ownFilesOf(Workplace &workplace, const BoxId &box)
{
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!boxes)
        return boxes.error();
    Gathering gathering;
    for (const store::BoxRow &other : *boxes) {
        const auto entries = ownEntriesOf(workplace, other.id);
        if (!entries)
            return entries.error();
        for (const OwnEntry &entry : *entries) {
            if (other.id == box)
                gathering.add(entry);
            else
                gathering.addNames(entry);
        }
    }
    if (workplace.device.role == store::Role::Therapist) {
        const auto kept = ownKept(workplace);
        if (!kept)
            return kept.error();
        for (const workbench::OwnKept &one : *kept)
            gathering.addKept(one);
    }
    return std::move(gathering).files();
}

Result<catalogue::OwnFiles> ownFilesFor(Workplace &workplace, const std::string &child)
{
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!boxes)
        return boxes.error();
    BoxId box;
    for (const store::BoxRow &row : *boxes) {
        if (row.alias == child || (child.empty() && boxes->size() == 1))
            box = row.id;
    }
    return ownFilesOf(workplace, box);
}

} // namespace lidlark::usecase
