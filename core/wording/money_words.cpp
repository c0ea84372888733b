#include "core/wording/money_words.h"

#include "core/workbench/supply.h"

namespace lidlark::wording {

std::string moneyText(std::int64_t pence, std::string_view currency)
{
    const std::int64_t amount = pence < 0 ? -pence : pence;
    const std::string hundredths = std::to_string(amount % 100);
    std::string text = pence < 0 ? "-" : "";
    text += currency == "GBP" ? "\u00a3" : std::string(currency) + " ";
    text += std::to_string(amount / 100) + (hundredths.size() == 1 ? ".0" : ".") + hundredths;
    return text;
}

Sentence priceFaultWords(workbench::PriceFault fault, std::string_view currency)
{
    using workbench::PriceFault;
    switch (fault) {
    case PriceFault::NoNumber:
        return {say("Price: digits and one dot only, such as %1."), {std::string("1.50")}};
    case PriceFault::BelowZero:
        return {say("Price: nothing below zero."), {}};
    case PriceFault::NotTwoDigits:
        return {say("Price: two digits after the dot, such as %1."), {std::string("1.50")}};
    case PriceFault::TooMuch:
        return {say("Price: at most %1 for a pack."),
                {moneyText(workbench::mostPenceForPack, currency)}};
    case PriceFault::NoHundredths:
        break;
    }
    return {
        say("Price: Lidlark reckons in hundredths, and %1 has none. It cannot keep this price."),
        {std::string(currency)}};
}

} // namespace lidlark::wording
