#pragma once

#include "core/child/home_sheet.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::child {

/// One standing value of the home sheet. Person empty: about the home as a whole.
/// Facts of a person: alias, kind (child, adult), lives (yes, visits, no), born-by (ISO day),
/// mouths, pica, energy-limited (yes, no). Facts of a home: name, latex, latex-risk, wheat,
/// coeliac, milk, egg, nut, soy, adhesive, dye, others, emergency-number, poison-line (see
/// phone_number.h), likes-touch, pets, high-storage, bedtime (minute of the day), reviewed-only,
/// the therapist's flags
/// (seizure-shunt-or-neck ...), lacks-<item> for a household extra.
struct Fact {
    std::string person;
    std::string fact;
    std::string value;
    bool operator==(const Fact &) const = default;
};

std::string fieldsOf(const Fact &fact);

/// The words a fact can have, from the most careful to the least; empty for a name, a day or a
/// setting.
std::vector<std::string_view> wordsOf(std::string_view fact);

std::optional<Fact> readFact(const journal::Event &event);

/// The value in force of one (person, fact): the most careful of all standing statements; a
/// statement stops standing when its own author makes a later one that has seen it (events.md 8).
/// Names and settings: the latest (events.md 3).
/// @param events those of the subject, any order.
std::optional<Fact> foldFact(std::span<const journal::Event> events, const journal::Seen &seen);

/// The earliest standing "yes" among the statements of one (person, fact), by (instant, device,
/// counter): who said it first, and when. Null: nobody says yes, or not any more.
/// @param events those of the subject, any order; the result points into them.
const journal::Event *firstStandingYes(std::span<const journal::Event> events,
                                       const journal::Seen &seen);

/// One yes of the therapist, with its condition in words.
struct Permission {
    /// spin, breath, lift, straw, small-when-away, or floor-<activity> for a lower floor.
    std::string name;
    std::string words;
    int months = 0;  ///< The lower floor.
    int version = 0; ///< Of the activity for which it was said.
    bool operator==(const Permission &) const = default;
};

std::string fieldsOf(const Permission &permission, bool allowed);
/// Holds only while nobody has withdrawn it, even concurrently (events.md 8.3).
std::optional<Permission> foldPermission(std::span<const journal::Event> events,
                                         const journal::Seen &seen);

/// The sheet as the gate reads it. What nobody has said stays unanswered.
HomeSheet homeSheetFrom(const HomeId &id, std::span<const Fact> facts,
                        std::span<const Permission> permissions);

} // namespace lidlark::child
