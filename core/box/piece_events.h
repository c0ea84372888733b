#pragma once

#include "core/base/day.h"
#include "core/base/enum_names.h"
#include "core/journal/event.h"

#include <optional>
#include <string>

namespace lidlark::box {

/// One piece of a perishable, named by how it came: "packed/0", "2/0" for the first of the second
/// counting-in's round. The same on every device.
using PieceId = Id<struct PieceTag>;

/// @param round of the counting-in; none: packed. @param index 0-based among those that came with
/// it.
PieceId pieceId(std::optional<int> round, int index);

/// The day on which a piece was opened, or first used. No day: it was not opened after all.
struct Opened {
    ItemId item;
    PieceId piece;
    std::optional<Day> day;
};

/// A piece was found put back unwrapped.
struct LeftOpen {
    ItemId item;
    PieceId piece;
    Day day;
};

/// An item was looked over and is good: pegs hold, no band is cracked, the dough is soft.
struct Checked {
    ItemId item;
    Day day;
};

/// How many days a perishable keeps once opened, as this family says; none: as the item kind says.
struct KeepingLimit {
    ItemId item;
    std::optional<int> days;
};

/// What is done for the hygiene of one child's things (job.md T8, safety.md HY-01).
enum class HygieneMark { Mouthed, Washed, Replaced };
inline constexpr EnumNames<HygieneMark, 3> hygieneMarkNames{{"mouthed", "washed", "replaced"}};

struct HygieneSaid {
    ItemId item;
    HygieneMark mark = HygieneMark::Washed;
};

std::string fieldsOf(const Opened &opened);
std::string fieldsOf(const LeftOpen &leftOpen);
std::string fieldsOf(const Checked &checked);
std::string fieldsOf(const KeepingLimit &limit);
std::string fieldsOf(const HygieneSaid &said);
/// Nothing for malformed fields: such an event stays in the set without effect.
std::optional<Opened> readOpened(const journal::Event &event);
std::optional<LeftOpen> readLeftOpen(const journal::Event &event);
std::optional<Checked> readChecked(const journal::Event &event);
std::optional<KeepingLimit> readKeepingLimit(const journal::Event &event);
std::optional<HygieneSaid> readHygiene(const journal::Event &event);

} // namespace lidlark::box
