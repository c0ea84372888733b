#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/hygiene.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// A box between two families, and what is left to do before it may be handed over again.
struct TendedBox {
    workbench::BoxStatus status;
    std::vector<workbench::StillToDo> left;
};

/// Errors: NotFound (never handed over).
Result<TendedBox> tendedBox(Workplace &therapist, const std::string &code);

/// The codes of all boxes that were handed over or retired, and where they stand.
Result<std::vector<std::pair<std::string, workbench::Standing>>> knownBoxes(Workplace &therapist);

/// The box came back. Errors: NotAllowed, NotFound, Invalid (it is not with a child).
Outcome takeBoxBack(Workplace &therapist, const std::string &code);

/// Which item of which returned box, who tended it (empty: the phone's person), and when (absent:
/// today; not later, and not before the box came back).
struct BoxTending {
    std::string code;
    ItemId item;
    std::string author = {};
    std::optional<Day> day = std::nullopt;
};

/// Errors of the three: NotAllowed, NotFound (box, item), Invalid (not returned; a day that cannot
/// be). Of cleaning also Invalid where the item must be replaced.
Outcome cleanItem(Workplace &therapist, const BoxTending &tending, workbench::CleanedHow how);
/// @param lot of the new one; empty: not known.
Outcome replaceItem(Workplace &therapist, const BoxTending &tending, const std::string &lot);
/// The tick was a slip.
Outcome untendItem(Workplace &therapist, const BoxTending &tending);

/// The box is used no more, and never again. @param why in words, may be empty.
/// Errors: NotAllowed, NotFound, Invalid (it is so already; the words).
Outcome retireBox(Workplace &therapist, const std::string &code, const std::string &why);

} // namespace lidlark::usecase
