#pragma once

#include "core/usecase/workplace.h"

#include <map>
#include <string>

namespace lidlark::usecase {

/// The therapist changes what belongs in a box: the next revision of its lid list (events.md 5, box
/// revision). What it leaves out is to be taken out, at once on every phone that hears of it; what
/// it adds is on its way, and in the box when somebody has counted it in. A list that was written
/// without knowing of another is joined with it by the next.
/// @param packed the whole new list, pieces by item. @param why in words, for the family; may be
/// empty, at most box::longestWhy bytes.
/// Errors: NotAllowed (a therapist's phone only; an item added that a home of the child must avoid:
/// an allergy is nobody's to override, job.md T3), NotFound (child, item), Invalid (a number of
/// pieces that is none; the list as it is; words that are too long).
Outcome reviseBox(Workplace &therapist, const std::string &childAlias, const std::string &author,
                  const std::map<ItemId, int> &packed, const std::string &why = {});

} // namespace lidlark::usecase
