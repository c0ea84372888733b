#pragma once

#include "core/wording/noted_words.h"

namespace lidlark::wording {

/// What one event of a home's lanes, or of one's own notes, says; nothing for other events.
std::vector<Sentence> notedOfHome(const journal::Event &event, const NotedAbout &about);

} // namespace lidlark::wording
