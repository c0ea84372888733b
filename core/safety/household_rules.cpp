#include "core/safety/avoided_tags.h"
#include "core/safety/rules.h"

namespace lidlark::safety {

namespace {

using catalogue::ItemKind;
using catalogue::Tag;

using child::Answer;

/// What the home has said of an allergen that has no tag of its own.
Answer saidOf(const std::string &allergen, const Facts &facts)
{
    const child::HomeSheet *home = facts.situation.home;
    if (!home)
        return Answer::Unanswered;
    const auto said = home->avoidances.more.find(allergen);
    return said == home->avoidances.more.end() ? Answer::Unanswered : said->second;
}

/// AL-01: an allergen nobody has spoken of keeps its item away. Latex and wheat have their tags.
void allergenRules(const ItemKind &kind, const Facts &facts, Refusal &refusal)
{
    for (const std::string &allergen : kind.allergens) {
        if (allergen == "latex" || allergen == "wheat")
            continue;
        if (allergen == "milk") {
            if (facts.milk != Answer::No)
                refusal.push_back({.code = ReasonCode::MilkInHome, .item = kind.id});
        } else if (saidOf(allergen, facts) != Answer::No) {
            refusal.push_back(
                {.code = ReasonCode::AllergenInHome, .item = kind.id, .name = allergen});
        }
    }
}

/// Names the items that carry the tag; without one, the tag is the activity's own.
void refuseTag(const Form &form, Tag tag, ReasonCode code, Refusal &refusal)
{
    if (!form.tags.has(tag))
        return;
    bool named = false;
    for (const Part &part : form.parts) {
        if (part.kind && part.kind->tags.has(tag)) {
            refusal.push_back({.code = code, .item = part.kind->id});
            named = true;
        }
    }
    if (!named)
        refusal.push_back({.code = code});
}

} // namespace

void householdRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    if (const child::HomeSheet *home = facts.situation.home) {
        const catalogue::TagSet avoided = avoidedTags(home->avoidances);
        if (avoided.has(Tag::Latex))
            refuseTag(form, Tag::Latex, ReasonCode::LatexInHome, refusal);
        if (avoided.has(Tag::Wheat))
            refuseTag(form, Tag::Wheat, ReasonCode::WheatInHome, refusal);
    }
    for (const Part &part : form.parts) {
        if (part.kind)
            allergenRules(*part.kind, facts, refusal);
    }
}

} // namespace lidlark::safety
