#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::arrows {

/// For each folder, the other folders its files may name. A folder may always name itself.
using ArrowTable = std::map<std::string, std::set<std::string>, std::less<>>;

/// The rules (values and pure functions), each with the folders it stands on. Every arrow is
/// listed. One that is not here does not exist yet: whoever needs it adds it, and sees then what
/// it ties together.
const ArrowTable &arrowsAmongTheRules();

/// All arrows of the house: those among the rules, and the layers above them,
/// base <- rules <- store <- usecase <- {cli, bridge}, store and crypto <- sync <- {cli, bridge},
/// rules <- wording <- {cli, bridge, screens}, {bridge, design} <- screens <- app.
const ArrowTable &arrowsOfTheHouse();

/// The folder a path belongs to: "core/box", "mobile/today", "tests/core". A file straight in
/// core/, mobile/ or tests/ belongs to "core", "mobile" or "tests".
std::string folderOf(std::string_view path);

/// Whether a file of folder @p from may name a file of folder @p to. A folder under core/ or
/// mobile/ that @p table does not know may name nothing but itself, and nobody may name it.
/// tests/core may name core and tests; all other tests may name everything.
bool mayName(const ArrowTable &table, std::string_view from, std::string_view to);

/// A walk along the arrows that comes back to where it began ("a -> b -> a"), or nothing.
std::optional<std::string> circleIn(const ArrowTable &table);

} // namespace lidlark::arrows
