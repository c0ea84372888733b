#include "core/wording/money_words.h"

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

} // namespace lidlark::wording
