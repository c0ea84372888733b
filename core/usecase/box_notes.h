#pragma once

#include "core/box/act.h"
#include "core/box/exceptions.h"
#include "core/usecase/family.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// Something an adult noted about the box beside a play: kept in the notebook.
struct BoxNote {
    box::Act act = box::Act::FloorChecked;
    ItemId item;                                          ///< Empty: several items counted at once.
    int pieces = 0;                                       ///< Found, counted in, gone; else 0.
    box::ExceptionKind kind = box::ExceptionKind::UsedUp; ///< What became of what is gone.
    std::string author;
    DayPart when;
    Instant at;
};

/// Newest first. Several entries of one act (a floor looked over for two losses of an item, a full
/// count) are one note. @param since first day.
Result<std::vector<BoxNote>> boxNotesOf(Workplace &workplace, const Family &family, Day since);

} // namespace lidlark::usecase
