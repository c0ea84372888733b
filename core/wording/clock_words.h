#pragma once

#include <string>

namespace lidlark::wording {

/// "18:05".
std::string clockTime(int minuteOfDay);

} // namespace lidlark::wording
