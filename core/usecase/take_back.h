#pragma once

#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// Whose word is taken back, and which.
struct TakingBack {
    std::string child;  ///< Alias.
    std::string author; ///< Empty: the phone's own person.
    std::string event;  ///< Identity of any event of the act.
};

/// Takes back what one act said today, all of it, by new events: nothing is deleted.
/// Errors: NotFound (child; nothing of that identity was noted today), Invalid (somebody else noted
/// it; it is taken back already; it is corrected elsewhere).
Outcome takeBack(Workplace &workplace, const TakingBack &what);

/// Puts in again what was taken back today. Errors: as takeBack.
Outcome putInAgain(Workplace &workplace, const TakingBack &what);

/// The identity of the last thing @p author noted today that still stands. Errors: NotFound.
Result<std::string> lastNotedBy(Workplace &workplace, const std::string &childAlias,
                                const std::string &author);

} // namespace lidlark::usecase
