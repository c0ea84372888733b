#pragma once

#include "core/base/result.h"
#include "core/catalogue/catalogue.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// One plain sentence or two: what happened, that nothing was lost, what to do.
/// @param names whose names stand for the ids of items and activities; null: the ids, as who types
/// commands knows them.
Sentence sentenceFor(const Error &error, const catalogue::Catalogue *names = nullptr);

} // namespace lidlark::wording
