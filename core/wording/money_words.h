#pragma once

#include "core/wording/sentence.h"
#include "core/workbench/price_text.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace lidlark::wording {

/// "£220.34", "EUR 12.00": a sign where a currency's own is known to all who use it, else its code.
/// @param pence hundredths of the currency's unit; below zero: "-£0.05".
/// @param currency ISO 4217: "GBP".
std::string moneyText(std::int64_t pence, std::string_view currency);

/// Why what was typed is no price, with the field named: "Price: two digits after the dot ..."
/// @param currency ISO 4217: "GBP".
Sentence priceFaultWords(workbench::PriceFault fault, std::string_view currency);

} // namespace lidlark::wording
