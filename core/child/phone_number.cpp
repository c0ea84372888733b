#include "core/child/phone_number.h"

#include <algorithm>

namespace lidlark::child {

namespace {

constexpr std::size_t longestNumber = 20;
constexpr int fewestDigits = 2;

bool isDigit(char letter)
{
    return letter >= '0' && letter <= '9';
}

} // namespace

bool isPhoneNumber(std::string_view text)
{
    const bool plain = std::all_of(text.begin(), text.end(), [](char letter) {
        return isDigit(letter) || letter == ' ' || letter == '+' || letter == '-';
    });
    return plain && text.size() <= longestNumber &&
           std::count_if(text.begin(), text.end(), isDigit) >= fewestDigits;
}

std::string dialled(std::string_view number)
{
    std::string dial;
    for (const char letter : number) {
        if (isDigit(letter) || (letter == '+' && dial.empty()))
            dial.push_back(letter);
    }
    return dial;
}

} // namespace lidlark::child
