#include "core/catalogue/tag_floor.h"
#include "core/safety/rules.h"

namespace lidlark::safety {

void ageRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    if (!facts.months)
        return; // Judged by the rules for an unknown age.
    const int floor = form.activity->ageFloorMonths;
    if (*facts.months < floor)
        refusal.push_back({.code = ReasonCode::BelowFloor, .number = floor});
    for (const catalogue::Tag tag : form.tags.list()) {
        const int tagFloor = catalogue::floorMonthsOf(tag);
        if (*facts.months < tagFloor)
            refusal.push_back({.code = ReasonCode::BelowTagFloor, .tag = tag, .number = tagFloor});
    }
}

} // namespace lidlark::safety
