#include "mobile/bridge/time_words.h"

#include "mobile/bridge/numerals.h"

namespace lidlark::mobile {

QString timeWords(int minuteOfDay)
{
    constexpr int minutesOfHour = 60;
    constexpr int hoursOfDay = 24;
    return numerals(QStringLiteral("%1:%2")
                        .arg(minuteOfDay / minutesOfHour % hoursOfDay, 2, 10, QLatin1Char('0'))
                        .arg(minuteOfDay % minutesOfHour, 2, 10, QLatin1Char('0')));
}

} // namespace lidlark::mobile
