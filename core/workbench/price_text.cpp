#include "core/workbench/price_text.h"

#include "core/workbench/supply.h"

#include <algorithm>
#include <array>

namespace lidlark::workbench {

namespace {

constexpr std::array<std::string_view, 17> withNone{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY",
                                                    "KMF", "KRW", "PYG", "RWF", "UGX", "UYI",
                                                    "VND", "VUV", "XAF", "XOF", "XPF"};
constexpr std::array<std::string_view, 7> withThree{"BHD", "IQD", "JOD", "KWD",
                                                    "LYD", "OMR", "TND"};
constexpr std::array<std::string_view, 2> withFour{"CLF", "UYW"};

std::string_view withoutSpace(std::string_view text)
{
    constexpr std::string_view spaces = " \t\r\n";
    const auto first = text.find_first_not_of(spaces);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(spaces) - first + 1);
}

bool isDigits(std::string_view text)
{
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// Leading zeros are nothing; what has more digits than the dearest pack is too much.
ReadPrice priceOf(std::string_view digits)
{
    std::int64_t pence = 0;
    for (const char digit : digits) {
        pence = pence * 10 + (digit - '0');
        if (pence > mostPenceForPack)
            return {std::nullopt, PriceFault::TooMuch};
    }
    return {pence, std::nullopt};
}

} // namespace

int minorDigits(std::string_view currency)
{
    const auto among = [currency](const auto &codes) {
        return std::ranges::find(codes, currency) != codes.end();
    };
    if (among(withNone))
        return 0;
    if (among(withThree))
        return 3;
    return among(withFour) ? 4 : 2;
}

ReadPrice readPrice(std::string_view typed, std::string_view currency)
{
    const std::string_view text = withoutSpace(typed);
    if (text.empty())
        return {};
    if (minorDigits(currency) != 2)
        return {std::nullopt, PriceFault::NoHundredths};
    const auto point = text.find_first_of(".,");
    const std::string_view units = text.substr(0, point);
    if (units.starts_with('-') && (units.size() == 1 || isDigits(units.substr(1))))
        return {std::nullopt, PriceFault::BelowZero};
    if (!isDigits(units))
        return {std::nullopt, PriceFault::NoNumber};
    if (point == std::string_view::npos)
        return priceOf(std::string(units) + "00");
    const std::string_view hundredths = text.substr(point + 1);
    if (!hundredths.empty() && !isDigits(hundredths))
        return {std::nullopt, PriceFault::NoNumber};
    if (hundredths.size() != 2)
        return {std::nullopt, PriceFault::NotTwoDigits};
    return priceOf(std::string(units) + std::string(hundredths));
}

std::string priceText(std::int64_t pence)
{
    const std::string hundredths = std::to_string(pence % 100);
    return std::to_string(pence / 100) + (hundredths.size() == 1 ? ".0" : ".") + hundredths;
}

} // namespace lidlark::workbench
