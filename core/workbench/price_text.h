#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark::workbench {

/// Why what was typed is no price.
enum class PriceFault {
    NoNumber,     ///< Anything but digits and one point or comma: "£1.50", "1e3", "a lot".
    BelowZero,    ///< "-1".
    NotTwoDigits, ///< After the point: "1.5", "1.234", "1,".
    TooMuch,      ///< More than any pack costs.
    NoHundredths  ///< The currency is not divided into hundredths: JPY, BHD.
};

/// What was read: hundredths of the currency's unit, or why not. Neither: nothing was typed.
struct ReadPrice {
    std::optional<std::int64_t> pence;
    std::optional<PriceFault> fault;
    bool operator==(const ReadPrice &) const = default;
};

/// A price as it is typed: "1.50", "1,50", "12", with space around it. Where there is a point or a
/// comma, exactly two digits follow it, so that "1.5" and a comma for thousands are asked about
/// and never guessed.
/// @param currency ISO 4217; of one without hundredths no price is taken at all.
ReadPrice readPrice(std::string_view typed, std::string_view currency);

/// As it is typed: "1.50". @param pence 0 or more.
std::string priceText(std::int64_t pence);

/// Decimal digits of the currency's minor unit; 2 for every code that is not known to have others.
/// Source: ISO 4217:2015, table A.1, column "minor unit", from memory; beside it ICU 72, whose
/// figures are the same but for IQD (0 there).
int minorDigits(std::string_view currency);

} // namespace lidlark::workbench
