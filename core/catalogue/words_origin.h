#pragma once

#include "core/base/enum_names.h"

namespace lidlark::catalogue {

/// Where the words of an entry come from.
enum class WordsOrigin {
    Ours,        ///< As they were written.
    MachineMade, ///< A translation that nobody has checked yet.
    Reviewed     ///< A translation that somebody who speaks the language has checked.
};
inline constexpr EnumNames<WordsOrigin, 3> wordsOriginNames{{"ours", "machine-made", "reviewed"}};

} // namespace lidlark::catalogue
