#include "core/safety/rules.h"

#include <algorithm>

namespace lidlark::safety {

namespace {

using catalogue::ItemKind;
using catalogue::Tag;

bool holdsMilk(const ItemKind &kind)
{
    return std::find(kind.allergens.begin(), kind.allergens.end(), "milk") != kind.allergens.end();
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
        const child::Avoidances &avoid = home->avoidances;
        if (avoid.latex == child::Answer::Yes)
            refuseTag(form, Tag::Latex, ReasonCode::LatexInHome, refusal);
        if (avoid.wheat == child::Answer::Yes || avoid.coeliac == child::Answer::Yes)
            refuseTag(form, Tag::Wheat, ReasonCode::WheatInHome, refusal);
    }
    for (const Part &part : form.parts) {
        if (part.kind && holdsMilk(*part.kind) && facts.milk != child::Answer::No)
            refusal.push_back({.code = ReasonCode::MilkInHome, .item = part.kind->id});
    }
}

} // namespace lidlark::safety
