#pragma once

#include "core/catalogue/catalogue.h"
#include "core/wording/sentence.h"

#include <string>

namespace lidlark::wording {

/// What an error speaks of, as words that can be translated where it is one of those that somebody
/// at a screen can meet: "this play", "pegs: more than the box held". Anything else as it is.
/// @param names whose names stand for the ids of items and activities in it; null: the ids.
Argument detailWords(const std::string &detail, const catalogue::Catalogue *names = nullptr);

} // namespace lidlark::wording
