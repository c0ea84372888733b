#pragma once

#include "core/base/day.h"
#include "core/base/enum_names.h"

#include <cstddef>
#include <string>

namespace lidlark::goals {

/// What becomes of a goal as a whole, whatever its words.
enum class Turn {
    Reached,     ///< It was reached.
    MattersLess, ///< It is set aside: it matters less now.
    Replaced,    ///< Another goal takes its place.
    TakenUp      ///< It is worked towards again.
};
inline constexpr EnumNames<Turn, 4> turnNames{{"reached", "matters-less", "replaced", "taken-up"}};
inline constexpr bool ends(Turn turn)
{
    return turn != Turn::TakenUp;
}

inline constexpr std::size_t longestTurnWords = 200; ///< Characters.

/// Somebody's word that a goal has come to an end, or is taken up again.
struct GoalTurn {
    Turn turn = Turn::Reached;
    Day on;
    std::string words; ///< Why, in the words of whoever said it; may be empty.
    std::string by;    ///< The person's alias: the event's author, no field of its own.
    bool operator==(const GoalTurn &) const = default;
};

} // namespace lidlark::goals
