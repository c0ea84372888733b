#pragma once

#include "core/base/enum_names.h"

namespace lidlark::checkin {

/// What a child shows (checkin.md 2). All five are equal answers; the hand is a call for a person.
enum class Kite { Resting, Steady, Whirling, Clouds, Bag };

inline constexpr EnumNames<Kite, 5> kiteNames{{"resting", "steady", "whirling", "clouds", "bag"}};

/// Who tapped. An adult's guess is kept apart and never replaces the child's tap.
enum class ShownBy { Child, AdultGuess };
inline constexpr EnumNames<ShownBy, 2> shownByNames{{"child", "adult-guess"}};

} // namespace lidlark::checkin
