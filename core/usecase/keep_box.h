#pragma once

#include "core/usecase/workplace.h"

#include <map>
#include <string>

namespace lidlark::usecase {

/// A full count of some items (events.md 6.4). Items not named keep their ledger.
/// Errors: NotFound (child, item), Invalid (below zero, or over 999).
Outcome countBox(Workplace &workplace, const std::string &childAlias, const std::string &author,
                 const std::map<ItemId, int> &counts);

/// Lost pieces turned up. Closes what it had seen, oldest first.
Outcome noteFound(Workplace &workplace, const std::string &childAlias, const std::string &author,
                  const ItemId &item, int count);

/// The floor was looked over for every open loss, and nothing more was found (scenario 5).
Outcome checkFloor(Workplace &workplace, const std::string &childAlias, const std::string &author);

/// Where the box is now: a home's id, "school" or "away", with the words a person reads.
Outcome sayPlace(Workplace &workplace, const std::string &childAlias, const std::string &place,
                 const std::string &words);

} // namespace lidlark::usecase
