#pragma once

#include "core/box/question.h"

#include <string>

namespace lidlark::box {

/// What of a question stands on one phone.
enum class QuestionLook {
    Asks,  ///< With its answers: it is put to this phone's person, or has waited for a day.
    Waits, ///< Somebody else is asked; from the next day on anybody may answer.
    Said,  ///< Answered today or yesterday: what was said, and by whom.
    Gone
};

/// @param person who uses the phone. @param device the phone itself. Source: events.md 7.
QuestionLook lookOf(const Question &question, const std::string &person, const DeviceId &device,
                    Day today);

} // namespace lidlark::box
