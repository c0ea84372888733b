#pragma once

#include "core/sync/crew_book.h"

namespace lidlark::sync {

/// What others wrote into this store before there was a crew of @p box is to be handed on, as soon
/// as there are keys; inside a transaction of the caller's.
Outcome askToHandOn(Post &post, const std::string &box);

/// Seals it, lane by lane, where that was asked for: nobody else would bring it.
Outcome handOnIfAsked(Post &post, const CrewBook &book);

} // namespace lidlark::sync
