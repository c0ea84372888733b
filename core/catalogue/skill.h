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

/// What a family reads.
inline constexpr EnumNames<Skill, skillCount> skillFamilyWords{
    {"finger-and-thumb pick-up",
     "three-finger hold for drawing tools",
     "two hands working as a team",
     "moving things inside one hand",
     "reaching across the middle",
     "working out a new movement",
     "feeling push and pull in muscles",
     "learning by touch",
     "movement and balance sense",
     "mouth and breath play",
     "eyes guiding hands",
     "strong hands",
     "not too hard, not too soft",
     "steady body",
     "one finger at a time",
     "noticing and matching by eye",
     "keeping a beat",
     "holding on to an idea",
     "using a tool",
     "doing it together",
     "knowing where my body is"}};

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

inline constexpr EnumNames<LifeArea, 8> lifeAreaNames{
    {"dressing", "mealtime tools", "drawing and writing", "cutting and making", "opening things",
     "play with others", "getting ready", "settling"}};

} // namespace lidlark::catalogue
