#pragma once

#include "core/box/item_changes.h"
#include "core/box/question.h"

namespace lidlark::box {

/// An event as one side of a question.
Side sideOf(const journal::Event &event);

/// A question over these events: its sides in the order they were written, and whom it is put to.
/// @param id see questionId.
Question questionOver(std::string id, QuestionSort sort,
                      std::vector<const journal::Event *> events);

} // namespace lidlark::box
