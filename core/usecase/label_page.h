#pragma once

#include "core/child/avoided.h"
#include "core/usecase/family.h"

#include <set>
#include <string>

namespace lidlark::usecase {

/// What stands on a box's label, where visitors read it (job.md T6, D9), and all that does: no
/// diagnosis, surname, birth date, age, address, goal. There is no field for them here.
struct LabelPage {
    std::string name;                 ///< The first word of the alias: a second could be a surname.
    std::string code;                 ///< Of the box (core/box/box_code.h).
    std::set<child::Avoided> avoided; ///< By any of the child's homes; never whose it is.
    std::string contact;              ///< Of the service, as typed; empty: not typed yet.
};

/// Errors: those of the store.
Result<LabelPage> labelPageOf(Workplace &workplace, const Family &family);

/// How the service is reached, for the labels of every box on this phone; empty: not typed yet.
Result<std::string> serviceContact(Workplace &workplace);
/// Errors: NotAllowed (a therapist's phone only), Invalid ("contact": over 60 characters, or more
/// than one line).
Outcome setServiceContact(Workplace &workplace, const std::string &words);

} // namespace lidlark::usecase
