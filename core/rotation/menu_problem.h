#pragma once

#include "core/rotation/coverage.h"

#include <vector>

namespace lidlark::rotation {

/// So many minutes on one of the problem's curves.
struct Amount {
    int curve = 0;
    int minutes = 0;
};

/// So many pieces of one of the problem's items.
struct Need {
    int item = 0;
    int pieces = 0;
};

/// An entry that is of no family may stand beside any other.
inline constexpr int noFamily = -1;

/// One entry that may be offered, in numbers alone.
struct Entry {
    int worth = 0;               ///< Tenths.
    std::vector<Amount> amounts; ///< Each curve at most once.
    std::vector<Need> needs;     ///< Each item at most once.
    int family = noFamily;       ///< Entries of one family have the same number.
    int minutes = 0;             ///< Where the chosen share the minutes of a day.
    bool isNew = false;
    bool isKnownFriend = false;
    bool isWithoutTable = false;
    bool isMessy = false;    ///< Mess 2.
    bool isHeldBack = false; ///< Only where nothing else can fill the place.
};

/// What is solved (reference/rotation.md): choose k entries with the largest sum of worth plus, for
/// every curve, the gain of the minutes they put on it together.
struct MenuProblem {
    std::vector<Entry> entries; ///< In the order that breaks ties: first comes first.
    std::vector<Curve> curves;
    std::vector<int> stock; ///< Pieces of each item; the chosen together stay within it.
};

} // namespace lidlark::rotation
