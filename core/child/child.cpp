#include "core/child/child.h"

namespace lidlark::child {

std::optional<Age> ageFromBirthMonth(int year, int month)
{
    const auto next = month == 12 ? dayFrom({year + 1, 1, 1}) : dayFrom({year, month + 1, 1});
    if (!dayFrom({year, month, 1}) || !next)
        return std::nullopt;
    return Age{*next - 1};
}

Age ageFromMonths(int months, Day saidOn)
{
    return {latestDayWithMonths(saidOn, months)};
}

} // namespace lidlark::child
