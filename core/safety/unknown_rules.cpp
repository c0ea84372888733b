#include "core/safety/rules.h"
#include "core/safety/tag_groups.h"

namespace lidlark::safety {

namespace {

using catalogue::Tag;
using catalogue::TagSet;

/// "Only entries with floor 18, no hard tag, no TRACE, no WATER and no TOUCH": of the entry as it
/// is written as well as of this form, since nobody has said that a swap is safe here.
bool isForAnyone(const Form &form)
{
    constexpr int floorForAnyone = 18;
    constexpr TagSet barred = hardTags | TagSet{Tag::Trace, Tag::Water, Tag::Touch};
    const TagSet tags = form.activity->cautions | form.tags;
    return form.activity->ageFloorMonths <= floorForAnyone && (tags & barred).empty();
}

} // namespace

void unknownRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    if (isForAnyone(form))
        return;
    if (!facts.months)
        refusal.push_back({.code = ReasonCode::AgeUnknown});
    if (!facts.allergiesAnswered)
        refusal.push_back({.code = ReasonCode::AllergyUnanswered});
}

} // namespace lidlark::safety
