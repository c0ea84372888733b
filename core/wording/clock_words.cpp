#include "core/wording/clock_words.h"

namespace lidlark::wording {

std::string clockTime(int minuteOfDay)
{
    const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return two(minuteOfDay / 60) + ":" + two(minuteOfDay % 60);
}

} // namespace lidlark::wording
