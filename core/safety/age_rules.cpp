#include "core/catalogue/tag_floor.h"
#include "core/safety/rules.h"

#include <algorithm>

namespace lidlark::safety {

namespace {

/// A therapist may lower the floor of one version of an activity, for skill reasons; a form that a
/// swap makes older keeps its own floor.
int floorOf(const Form &form, const Facts &facts)
{
    const auto lowered = facts.permissions.floors.find(form.activity->id);
    const int own = form.activity->ageFloorMonths;
    if (lowered == facts.permissions.floors.end() || form.floorMonths > own ||
        lowered->second.version != form.activity->version)
        return form.floorMonths;
    return std::min(own, lowered->second.months);
}

} // namespace

void ageRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    if (!facts.months)
        return; // Judged by the rules for an unknown age.
    const int floor = floorOf(form, facts);
    if (*facts.months < floor)
        refusal.push_back({.code = ReasonCode::BelowFloor, .number = floor});
    for (const catalogue::Tag tag : form.tags.list()) {
        const int tagFloor = catalogue::floorMonthsOf(tag);
        if (*facts.months < tagFloor)
            refusal.push_back({.code = ReasonCode::BelowTagFloor, .tag = tag, .number = tagFloor});
    }
}

} // namespace lidlark::safety
