#pragma once

#include "core/wording/sentence.h"

#include <optional>
#include <string>

namespace lidlark::wording {

/// What a full count found of one item.
struct Counted {
    std::string name; ///< "pegs".
    int pieces = 0;
    int low = 0;  ///< What was expected in the box, at least ...
    int high = 0; ///< ... and at most.
};

/// "Pegs: 5 counted, 6 expected. One is missing."; nothing where the count is what was expected.
std::optional<Sentence> countDifference(const Counted &counted);

/// "6", "4 or 5", "2 to 6": how many lie in the box.
Sentence rangeWords(int low, int high);

/// "Six went out. Five home."
Sentence wentOutWords(int out, int home);

/// A piece that was counted, said aloud: "three".
Sentence countedAloud(int pieces);

/// A piece is home, said aloud: "three", and with the last of all "six, all home".
/// @param home pieces that are home now. @param all pieces that come home.
Sentence homeAloud(int home, int all);

} // namespace lidlark::wording
