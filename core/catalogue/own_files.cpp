#include "core/catalogue/own_files.h"

#include "core/catalogue/entry_shelf.h"
#include "core/catalogue/family_lines.h"
#include "core/catalogue/most_careful.h"
#include "core/catalogue/read_activity.h"
#include "core/catalogue/read_item.h"
#include "core/catalogue/translation.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

/// What a page has room for, and a drawing that is there.
void checkShown(std::string_view field, std::string_view text, std::size_t most, Findings &findings)
{
    if (text.size() > most)
        findings.addAt(field, "is longer than " + std::to_string(most) + " bytes");
}

class DrawingsOf
{
public:
    explicit DrawingsOf(const Catalogue &base)
    {
        for (const ItemKind &item : base.items())
            m_names.insert(item.drawing);
        for (const Activity &activity : base.activities()) {
            m_names.insert(activity.picture.drawing);
            for (const Step &step : activity.steps) {
                if (step.picture)
                    m_names.insert(step.picture->drawing);
            }
        }
        m_names.insert("item-box");
    }

    void check(std::string_view field, const std::string &drawing, Findings &findings) const
    {
        if (!m_names.contains(drawing))
            findings.addAt(field, "there is no drawing \"" + drawing + "\"");
    }

private:
    std::set<std::string> m_names;
};

/// Puts a therapist's own files over a catalogue.
class OverBase
{
public:
    OverBase(const Catalogue &base, const OwnFiles &own)
        : m_base(base), m_own(own), m_drawings(base), m_doubtful(own.doubtful),
          m_problems(base.problems()), m_items(m_problems), m_activities(m_problems)
    {
    }

    [[nodiscard]] Catalogue made()
    {
        for (const ItemKind &item : m_base.items())
            m_items.hold(inEnglish(item), "items/" + item.id.value + ".yaml");
        takeItems();
        dropUnsound(m_items);
        for (const Activity &activity : m_base.activities())
            m_activities.hold(inEnglish(activity), "activities/" + activity.id.value + ".yaml");
        for (const SourceFile &file : m_own.activities)
            takeActivity(file);
        dropDoubtful();
        dropUnsound(m_activities, m_items);
        return {shownItems(), shownActivities(), std::move(m_problems), m_base.untranslated()};
    }

private:
    /// In the order in which they are given.
    void takeItems()
    {
        std::vector<ItemId> order;
        std::map<ItemId, std::vector<const SourceFile *>> versions;
        for (const SourceFile &file : m_own.items) {
            std::vector<const SourceFile *> &files = versions[{stemOf(file.name)}];
            if (files.empty())
                order.push_back({stemOf(file.name)});
            files.push_back(&file);
        }
        for (const ItemId &id : order)
            takeItem(id, versions.at(id));
        m_unread = 0; // activities are counted by themselves
    }

    void takeItem(const ItemId &id, const std::vector<const SourceFile *> &files)
    {
        std::optional<ItemKind> item;
        for (std::size_t i = 0; i < std::min(files.size(), mostOwnVersions); ++i) {
            const auto read = readOne(*files[i]);
            if (!read)
                m_doubtful.insert(id);
            else
                item = item ? mostCareful(*std::move(item), *read) : *read;
        }
        if (files.size() > mostOwnVersions) {
            m_doubtful.insert(id);
            m_problems.push_back({files.front()->name, 0, {}, "was written in too many ways"});
        }
        if (!item)
            return;
        const ItemKind *builtIn = m_base.item(id);
        if (builtIn != nullptr)
            m_said.insert_or_assign(id, *item);
        m_items.hold(builtIn != nullptr ? corrected(inEnglish(*builtIn), *item) : *std::move(item),
                     files.front()->name);
    }

    /// Enough was looked into in vain.
    bool isTooMuch(const SourceFile &file)
    {
        if (m_unread < mostOwnUnread)
            return false;
        m_problems.push_back({file.name, 0, {}, "was not looked into: too many cannot be read"});
        return true;
    }

    std::optional<ItemKind> readOne(const SourceFile &file)
    {
        if (isTooMuch(file))
            return std::nullopt;
        ItemShelf alone(m_problems);
        alone.put(withinBounds(file), readItem);
        alone.drop([this](const ItemKind &item, Findings &findings) {
            if (!isOwnId(item.id.value) && m_base.item(item.id) == nullptr)
                findings.addAt("id", "must begin with \"own-\"");
            checkShown("name", item.name, longestOwnName, findings);
            checkShown("one", item.one, longestOwnName, findings);
            checkShown("alt", item.alt, longestOwnLine, findings);
            for (const std::string &line : item.care)
                checkShown("care", line, longestOwnLine, findings);
            m_drawings.check("drawing", item.drawing, findings);
        });
        auto read = alone.take();
        m_unread += read.empty() ? 1 : 0;
        return read.empty() ? std::nullopt : std::optional(std::move(read.front()));
    }

    void takeActivity(const SourceFile &file)
    {
        if (isTooMuch(file))
            return;
        ActivityShelf alone(m_problems);
        alone.put(withinBounds(file), readActivity);
        alone.drop([this](const Activity &activity, Findings &findings) {
            if (!isOwnId(activity.id.value))
                findings.addAt("id", "must begin with \"own-\"");
            if (activity.entry != activity.id.value)
                findings.addAt("entry", "must be the id");
            checkShown("name", activity.name, longestOwnName, findings);
            for (const FamilyLine &line : everyLine(activity))
                checkShown(line.field, line.text, longestOwnLine, findings);
            m_drawings.check("picture.drawing", activity.picture.drawing, findings);
            for (const Step &step : activity.steps) {
                if (step.picture)
                    m_drawings.check("steps", step.picture->drawing, findings);
            }
        });
        m_unread += alone.entries().empty() ? 1 : 0;
        for (Activity &activity : alone.take()) {
            if (m_own.withdrawn.contains(activity.id))
                activity.status = Status::Withdrawn;
            m_activities.hold(std::move(activity), file.name);
        }
    }

    /// A text that is too long is read as an empty file: a problem, not a wait.
    static SourceFile withinBounds(const SourceFile &file)
    {
        return file.text.size() <= longestOwnText ? file : SourceFile{file.name, {}};
    }

    void dropDoubtful()
    {
        const auto wait = [this](const ItemId &item, Findings &findings) {
            if (m_doubtful.contains(item))
                findings.addAt("items", "what the therapist says of \"" + item.value +
                                            "\" cannot be read, so nothing is played with it");
        };
        m_activities.drop([&](const Activity &activity, Findings &findings) {
            for (const ItemUse &use : activity.items)
                wait(use.item, findings);
            for (const ActivitySwap &swap : activity.swaps)
                wait(swap.with, findings);
        });
    }

    std::vector<ItemKind> shownItems()
    {
        std::vector<ItemKind> items = m_items.take();
        for (ItemKind &item : items) {
            if (const ItemKind *shown = m_base.item(item.id)) {
                const auto said = m_said.find(item.id);
                item = said == m_said.end() ? *shown : corrected(*shown, said->second);
            }
        }
        return items;
    }

    std::vector<Activity> shownActivities()
    {
        std::vector<Activity> activities = m_activities.take();
        for (Activity &activity : activities) {
            if (const Activity *shown = m_base.activity(activity.id))
                activity = *shown;
        }
        return activities;
    }

    const Catalogue &m_base;
    const OwnFiles &m_own;
    DrawingsOf m_drawings;
    std::set<ItemId> m_doubtful;
    std::map<ItemId, ItemKind> m_said; ///< What is said of built-in items.
    std::vector<Problem> m_problems;
    int m_unread = 0;
    ItemShelf m_items;
    ActivityShelf m_activities;
};

} // namespace

Catalogue catalogueWith(const Catalogue &base, const OwnFiles &own)
{
    return OverBase(base, own).made();
}

} // namespace lidlark::catalogue
