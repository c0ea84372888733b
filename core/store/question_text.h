#pragma once

#include "core/box/question.h"

#include <optional>
#include <string>

namespace lidlark::store {

/// A question as one column: canonical JSON.
std::string textOf(const box::Question &question);
/// @returns nothing when the text was not written by textOf.
std::optional<box::Question> questionFrom(const std::string &text);

} // namespace lidlark::store
