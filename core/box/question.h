#pragma once

#include "core/base/enum_names.h"
#include "core/base/id.h"
#include "core/base/part_of_day.h"
#include "core/box/exceptions.h"

#include <string>
#include <vector>

namespace lidlark::box {

/// What only a person can tell about one item (events.md 5 to 7).
enum class QuestionSort {
    SameOrTwo,      ///< Two phones each noted a piece gone: the same piece, or two?
    BeforeOrAfter,  ///< Was a change before the count, or after it?
    WhoCountedLast, ///< Two counts of which neither had seen the other.
    WhichPutBack,   ///< Two values for one play.
    WhichCountedIn  ///< Two numbers for what arrived.
};
inline constexpr EnumNames<QuestionSort, 5> questionSortNames{
    {"same-or-two", "before-or-after", "who-counted-last", "which-put-back", "which-counted-in"}};

/// One of the two (or more) entries that a question sets side by side.
struct Side {
    std::string identity; ///< Of the event; the answer where one of the sides is chosen.
    std::string author;
    DeviceId device;
    DayPart when;
    int pieces = 0;          ///< Gone, counted, or arrived.
    bool isCount = false;    ///< BeforeOrAfter: this side is the count.
    bool brings = false;     ///< BeforeOrAfter: pieces came in (found, counted in).
    Exceptions exceptions{}; ///< Of a change that took pieces.
    bool operator==(const Side &) const = default;
};

/// Asked of one person; until it is answered the count is a range (design.md 3).
struct Question {
    std::string id; ///< The same on every device.
    QuestionSort sort = QuestionSort::SameOrTwo;
    ExceptionKind kind = ExceptionKind::UsedUp; ///< SameOrTwo: which word both said.
    std::vector<Side> sides;                    ///< Earlier by the written instant first.
    std::string askedOf; ///< Author of the side with the larger (instant, device, counter).
    DeviceId askedOn;    ///< That author's device.
    DayPart asked;       ///< Others may answer from the next day on.
    std::string answer;  ///< "same", "two", "before", "after", or a side's identity; empty: open.
    std::string answeredBy;
    DayPart answeredWhen;
    bool operator==(const Question &) const = default;

    [[nodiscard]] bool isOpen() const { return answer.empty(); }
};

/// What may be answered, the one that leaves the lower stock first.
std::vector<std::string> answersOf(const Question &question);

} // namespace lidlark::box
