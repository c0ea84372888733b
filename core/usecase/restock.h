#pragma once

#include "core/box/request_events.h"
#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// A family asks for more of an item, or for the item that stands in for another. Asked again while
/// the request is open changes nothing. Errors: NotFound (child, item).
Outcome askFor(Workplace &workplace, const std::string &childAlias, const std::string &author,
               const ItemId &item, const ItemId &insteadOf = {});

/// The request in hand has come a step on: seen, packed, on its way. A step back changes nothing.
/// Errors: NotFound (child; nobody asked for the item), Invalid (a step that is no step).
Outcome moveRequest(Workplace &workplace, const std::string &childAlias, const std::string &author,
                    const ItemId &item, box::RequestStep step);

/// What was sent lies in the box: closes the request in hand, asked for or not, and raises the
/// stock once, however many phones say so. Said again on this phone with another number before
/// anything new was asked: see correctCountedIn. Errors: NotFound (child, item), Invalid (fewer
/// than one piece, or over 999).
Outcome countIn(Workplace &workplace, const std::string &childAlias, const std::string &author,
                const ItemId &item, int pieces);

/// The number of the last counting-in was a slip. Errors: as countIn; NotFound (never counted in).
Outcome correctCountedIn(Workplace &workplace, const std::string &childAlias,
                         const std::string &author, const ItemId &item, int pieces);

} // namespace lidlark::usecase
