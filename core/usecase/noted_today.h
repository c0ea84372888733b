#pragma once

#include "core/journal/event.h"
#include "core/usecase/workplace.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// One thing that somebody noted today: what one act said in one lane.
struct Noted {
    std::vector<journal::Event> events; ///< Never empty; in the order in which they were said.
    ActivityId activity;                ///< Of the play that it is about; else empty.
    std::string person;                 ///< Alias of whom a safety statement is about; else empty.
    bool takenBack = false;
    /// Whether the one who asks may take it back, or put it in again. A first filling of the home
    /// sheet, or a person added to it, is no single statement: it is corrected there.
    bool mine = false;

    [[nodiscard]] const journal::Event &last() const { return events.back(); }
    [[nodiscard]] int minuteOfDay() const; ///< Local time of the author's phone.
};

/// What was noted today about a child: box, home, home sheet, and the asking person's own notes;
/// newest first, what was taken back too. What a later word of the same register has replaced is
/// left out, since taking it back would change nothing. Check-ins are not told of: they carry no
/// time, and have their own way back.
/// @param author who asks; empty: the phone's person. Errors: NotFound (child), ClockUnset.
Result<std::vector<Noted>> notedToday(Workplace &workplace, const std::string &childAlias,
                                      const std::string &author = {});

} // namespace lidlark::usecase
