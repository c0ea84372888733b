#pragma once

#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// An adult answers a question about an item (core/box/question.h). Anybody of the crew may; whose
/// turn it is, is a matter of the screen. The same answer again changes nothing.
/// @param answer "same", "two", "before", "after", a number of pieces that one of the sides says,
/// or that side's identity. Errors: NotFound (child, question), Invalid (not an answer to it, or a
/// number that both sides say), AlreadyAnswered (by whom; a different answer was given before).
Outcome answerQuestion(Workplace &workplace, const std::string &childAlias,
                       const std::string &author, const std::string &question,
                       const std::string &answer);

} // namespace lidlark::usecase
