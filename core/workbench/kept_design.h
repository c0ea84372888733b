#pragma once

#include "core/journal/seen.h"
#include "core/workbench/build.h"

#include <nlohmann/json_fwd.hpp>

#include <map>
#include <optional>
#include <span>

namespace lidlark::workbench {

using Designs = std::map<DesignId, Design>;

std::string fieldsOf(const Design &design);
/// The design is used no more; boxes that were built after it stay as they are.
std::string fieldsOfDesignRemoval(const DesignId &id);

/// @returns nothing for malformed fields.
std::optional<Design> designFrom(const std::string &fields);

/// A register: what has seen a design replaces it. @returns nothing when it was removed, or where
/// nothing is readable. @param events of one subject "design:<id>", any order.
std::optional<Design> foldDesign(std::span<const journal::Event> events, const journal::Seen &seen);

/// The parts of a design or a box, as they stand in an event.
nlohmann::json jsonOf(const std::vector<BoxPart> &parts);
/// @returns nothing for malformed ones, and for an item that stands twice.
std::optional<std::vector<BoxPart>> partsFrom(const nlohmann::json &json);

/// The field that cannot be kept, and why; nothing: all of it can.
std::optional<std::string> problemWith(const Design &design);
/// The same of parts alone: "pegs: 1 to 1000 pieces".
std::optional<std::string> problemWith(const std::vector<BoxPart> &parts);

} // namespace lidlark::workbench
