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
/// Source: ISO 8124-1:2022 clause 4.5.8 and the hemispheric clause of ASTM F963 (the clause was
/// read in the contents list, the figures are from memory; safety.md HM-01).
inline constexpr double leastSealMm = 64;
inline constexpr double mostSealMm = 102;
inline constexpr double leastSealDepthMm = 13;

/// Whether the opening may seal over nose and mouth. The rim itself counts as within: doubt is on
/// the careful side. What the standards leave out by volume is not left out here.
constexpr bool maySealAFace(const Hollow &hollow)
{
    const bool wide = hollow.acrossMm >= leastSealMm && hollow.narrowMm <= mostSealMm;
    return hollow.stiff && wide && hollow.deepMm > leastSealDepthMm;
}

} // namespace lidlark::measure
