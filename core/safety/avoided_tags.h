#pragma once

#include "core/catalogue/tag.h"
#include "core/child/home_sheet.h"

namespace lidlark::safety {

/// The tags that a home is kept free of because of what somebody there must avoid.
/// Source: activities.md 1.4, LATEX and WHEAT (coeliac disease too); safety.md LA-01 (a latex risk
/// is read as an allergy).
inline catalogue::TagSet avoidedTags(const child::Avoidances &avoid)
{
    using child::Answer;
    catalogue::TagSet tags;
    if (avoid.latex == Answer::Yes || avoid.latexRisk == Answer::Yes)
        tags.add(catalogue::Tag::Latex);
    if (avoid.wheat == Answer::Yes || avoid.coeliac == Answer::Yes)
        tags.add(catalogue::Tag::Wheat);
    return tags;
}

} // namespace lidlark::safety
