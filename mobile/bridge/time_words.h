#pragma once

#include <QString>

namespace lidlark::mobile {

/// "18:05", in the digits of the language. @param minuteOfDay past a midnight too: 1445 is "00:05".
QString timeWords(int minuteOfDay);

} // namespace lidlark::mobile
