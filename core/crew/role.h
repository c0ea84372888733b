#pragma once

#include "core/base/enum_names.h"

namespace lidlark::crew {

/// A person's part in a crew.
enum class Role { Parent, Caregiver, Guest, Therapist };
inline constexpr EnumNames<Role, 4> roleNames{{"parent", "caregiver", "guest", "therapist"}};

/// Whether somebody of this part lets others into the crew.
constexpr bool letsIn(Role role)
{
    return role == Role::Parent || role == Role::Therapist;
}

} // namespace lidlark::crew
