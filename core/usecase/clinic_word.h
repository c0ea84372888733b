#pragma once

#include "core/store/clinic_repository.h"
#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// Only a therapist's phone, or an assistant's beside it, keeps what the clinic keeps.
/// Errors: NotAllowed.
Outcome mayKeepClinic(const Workplace &workplace);

/// One event in the clinic's lane, in a transaction of its own. @param author empty: the phone's
/// person. Errors: NotAllowed.
Outcome sayInClinic(Workplace &workplace, journal::Kind kind, std::string fields,
                    const std::string &author = {});

/// The code on a box's label as it is kept: without spaces around it, small letters large.
/// Errors: Invalid (nothing, more than 12 characters, no plain text).
Result<std::string> boxCode(const std::string &typed);

/// "K7: " and the rest: an error about one box.
Error aboutBox(const std::string &code, const std::string &what);

} // namespace lidlark::usecase
