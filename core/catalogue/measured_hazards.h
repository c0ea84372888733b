#pragma once

#include "core/catalogue/measures.h"
#include "core/catalogue/tag.h"

#include <string>
#include <vector>

namespace lidlark::catalogue {

/// What geometry says of one kind of thing. A person may add a tag to what stands here, never take
/// one away (design.md 4).
struct MeasuredHazards {
    TagSet tags;
    bool isSmallBall = false;    ///< It is itself a ball that passes the 1.75 in hole.
    bool holdsSmallBall = false; ///< A ball that passes the hole comes off it.
    bool isMarble = false;
    bool sealsAFace = false; ///< A stiff hollow that may stick over nose and mouth.
    bool operator==(const MeasuredHazards &) const = default;
};

/// A tag and the measure it comes from: "the spring fits the small parts cylinder".
struct MeasuredTag {
    Tag tag;
    std::string because;
    bool operator==(const MeasuredTag &) const = default;
};

/// Source: 16 CFR 1501.4 (small parts), 1500.19(a)(1) and 1500.18(a)(17) (small balls; a ball that
/// passes the hole is kept from whom small parts are kept from), safety.md CO-01, CO-02, CO-05
/// (cords), HM-01 (hollows), SU-01 (suction cups).
MeasuredHazards hazardsOf(const Measures &measures);

/// The same tags, one by one, each with its reason.
std::vector<MeasuredTag> measuredTags(const Measures &measures);

/// For whoever has the tags already: the size check is not run again.
/// @param tags from measuredTags(measures).
MeasuredHazards hazardsOf(const Measures &measures, const std::vector<MeasuredTag> &tags);

/// Whether a rigid piece, whatever it is a piece of, is a small part, or a ball (a sphere: it
/// rolls) that passes the hole.
bool isSmall(const measure::Solid &piece);

} // namespace lidlark::catalogue
