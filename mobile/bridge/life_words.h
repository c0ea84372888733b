#pragma once

#include "core/rotation/menu.h"

#include <array>

namespace lidlark::mobile {

/// A life word by the name it is kept and asked under (job.md F6).
struct LifeWord {
    const char *name;
    bool rotation::Filters::*filter;
};

inline constexpr std::array<LifeWord, 7> lifeWords{{
    {"no-table", &rotation::Filters::noTable},
    {"no-mess", &rotation::Filters::noMess},
    {"quiet", &rotation::Filters::quiet},
    {"tired", &rotation::Filters::tiredAdult},
    {"one-hand", &rotation::Filters::oneHand},
    {"away", &rotation::Filters::awayFromHome},
    {"ill", &rotation::Filters::someoneIsIll},
}};

} // namespace lidlark::mobile
