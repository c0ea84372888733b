#include "core/child/child.h"

#include <algorithm>

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
    // Nobody of whom an age is said was born later than that day.
    return {std::min(latestDayWithMonths(saidOn, months), saidOn)};
}

Age ageFromYears(int years, int birthMonth, Day saidOn)
{
    constexpr int monthsAYear = 12;
    const Age atLeast = ageFromMonths(years * monthsAYear, saidOn);
    const CivilDate said = civilFrom(saidOn);
    const bool stillToCome = birthMonth > said.month;
    const auto byMonth = ageFromBirthMonth(said.year - years - (stillToCome ? 1 : 0), birthMonth);
    return byMonth ? std::min(*byMonth, atLeast,
                              [](const Age &left, const Age &right) {
                                  return left.latestBirth < right.latestBirth;
                              })
                   : atLeast;
}

} // namespace lidlark::child
