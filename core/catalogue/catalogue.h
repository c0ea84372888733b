#pragma once

#include "core/catalogue/activity.h"
#include "core/catalogue/item_kind.h"

#include <span>
#include <string>
#include <vector>

namespace lidlark::catalogue {

/// One catalogue file as read by whoever runs the core (a folder, or resources of an app).
struct SourceFile {
    std::string name; ///< Shown in messages: "activities/slow-oars.yaml".
    std::string text;
};

/// Why one entry, or its translation, was left out. The others are loaded all the same.
struct Problem {
    std::string file;
    int line = 0; ///< 1-based; 0 when no line can be named.
    std::string field;
    std::string reason; ///< Plain words.

    /// "activities/slow-oars.yaml:12: minutes.play: must be 3 to 8".
    [[nodiscard]] std::string text() const;
    bool operator==(const Problem &) const = default;
};

/// All items and activities that passed the checks.
class Catalogue
{
public:
    Catalogue() = default;
    /// @param items,activities sorted by id, ids unique.
    Catalogue(std::vector<ItemKind> items, std::vector<Activity> activities,
              std::vector<Problem> problems, std::vector<Problem> untranslated = {});

    [[nodiscard]] const std::vector<ItemKind> &items() const { return m_items; }
    [[nodiscard]] const std::vector<Activity> &activities() const { return m_activities; }
    [[nodiscard]] const std::vector<Problem> &problems() const { return m_problems; }
    /// Why entries stay English although they have a translation (core/catalogue/translation.h).
    [[nodiscard]] const std::vector<Problem> &untranslated() const { return m_untranslated; }

    /// @returns null when there is no such entry.
    [[nodiscard]] const ItemKind *item(const ItemId &id) const;
    [[nodiscard]] const Activity *activity(const ActivityId &id) const;

private:
    std::vector<ItemKind> m_items;
    std::vector<Activity> m_activities;
    std::vector<Problem> m_problems;
    std::vector<Problem> m_untranslated;
};

/// Reads and checks the whole catalogue. A broken file is reported and left out; entries that need
/// an item that is not there are left out too, with their own line.
/// Checks: every rule of activities.md 1.1 that a program can decide, and 1.3: the cautions of an
/// activity are at least all tags of its items (towel apart) and of the floors those tags carry.
Catalogue load(std::span<const SourceFile> items, std::span<const SourceFile> activities);

} // namespace lidlark::catalogue
