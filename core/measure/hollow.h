#pragma once

namespace lidlark::measure {

/// A bowl, half ball, dome or cup: one opening, in mm.
struct Hollow {
    double acrossMm = 0; ///< Inside, at the rim; the wider way of an oval.
    double narrowMm = 0; ///< The narrower way; the same for a round one.
    double deepMm = 0;
    bool stiff = true; ///< False: it crushes in a child's hand, as a paper cup does.
    bool operator==(const Hollow &) const = default;
};

/// Openings that can stick over a small child's nose and mouth.
/// Source: the hemispheric clause of ASTM F963-07 (read in a laboratory's notice of its changes)
/// and ISO 8124-1:2022 clause 4.5.8 (contents list read): inside 64 to 102 mm, deeper than 13 mm,
/// under three years. EN 71-1 annex A.50 (2009, read in an unofficial copy) tells of cups 69 to 97
/// mm wide (safety.md HM-01).
inline constexpr double leastSealMm = 64;
inline constexpr double mostSealMm = 102;
inline constexpr double leastSealDepthMm = 13;

/// Whether the opening may seal over nose and mouth. The rim itself counts as within: doubt is on
/// the careful side. Cups that hold 177 ml or more, which ASTM leaves out, are not left out here.
constexpr bool maySealAFace(const Hollow &hollow)
{
    const bool wide = hollow.acrossMm >= leastSealMm && hollow.narrowMm <= mostSealMm;
    return hollow.stiff && wide && hollow.deepMm > leastSealDepthMm;
}

} // namespace lidlark::measure
