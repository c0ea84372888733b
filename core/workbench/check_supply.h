#pragma once

#include "core/workbench/build_problem.h"
#include "core/workbench/supply.h"

#include <string_view>

namespace lidlark::workbench {

/// Three capital letters, as ISO 4217 has them.
bool isCurrency(std::string_view text);

/// Adds what no supply can be: no item, stock, a pack or a price outside its range.
void checkNumbers(const Supply &supply, BuildProblems &problems);

/// Adds what keeps an item from being bought: an offer without a price, or in another currency.
void checkPrices(const Supply &supply, std::string_view currency, BuildProblems &problems);

} // namespace lidlark::workbench
