#pragma once

#include "core/child/child.h"

#include <optional>
#include <string>

namespace lidlark::child {

/// A goal and the child it belongs to.
struct ChildGoal {
    ChildId child;
    Goal goal;
    bool operator==(const ChildGoal &) const = default;
};

std::string fieldsOf(const ChildGoal &goal);
/// @returns nothing unless every field is there and there are five levels.
std::optional<ChildGoal> goalFromFields(const std::string &fields);

} // namespace lidlark::child
