#pragma once

#include "core/base/enum_names.h"

namespace lidlark::catalogue {

/// Skill codes (activities.md 1.2): trade terms for therapists, family wording for everybody else.
enum class Skill {
    Pin,
    Tri,
    Bil,
    Inh,
    Mid,
    Prx,
    Pro,
    Tac,
    Ves,
    Orl,
    Vmi,
    Str,
    For,
    Pos,
    Iso,
    Vpe,
    Rhy,
    Att,
    Tool,
    Soc,
    Bod
};

inline constexpr std::size_t skillCount = 21;

inline constexpr EnumNames<Skill, skillCount> skillCodes{
    {"PIN", "TRI", "BIL", "INH", "MID", "PRX", "PRO", "TAC",  "VES", "ORL", "VMI",
     "STR", "FOR", "POS", "ISO", "VPE", "RHY", "ATT", "TOOL", "SOC", "BOD"}};

/// Parts of family life a goal can be about (activities.md 1.1).
enum class LifeArea {
    Dressing,
    MealtimeTools,
    DrawingAndWriting,
    CuttingAndMaking,
    OpeningThings,
    PlayWithOthers,
    GettingReady,
    Settling
};

inline constexpr std::size_t lifeAreaCount = 8;

inline constexpr EnumNames<LifeArea, lifeAreaCount> lifeAreaNames{
    {"dressing", "mealtime tools", "drawing and writing", "cutting and making", "opening things",
     "play with others", "getting ready", "settling"}};

} // namespace lidlark::catalogue
