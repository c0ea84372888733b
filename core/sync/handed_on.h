#pragma once

#include "core/journal/event.h"
#include "core/sync/crew_book.h"

#include <vector>

namespace lidlark::sync {

/// What this phone has handed on of a lane, of others' words, as far as it lies on the storage.
struct HandedOn {
    std::vector<journal::Event> still; ///< What is here today.
    bool somethingWent = false;        ///< Something in it was erased since.
};

Result<HandedOn> handedOnIn(Post &post, const CrewBook &book, const journal::Lane &lane);

} // namespace lidlark::sync
