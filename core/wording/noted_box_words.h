#pragma once

#include "core/wording/noted_words.h"

namespace lidlark::wording {

/// What one event of the box lane says, a whole line each; nothing for other events.
std::vector<Sentence> notedOfBox(const journal::Event &event, const NotedAbout &about);

} // namespace lidlark::wording
