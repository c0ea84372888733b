#pragma once

#include "core/base/enum_names.h"
#include "core/base/result.h"
#include "core/grading/refusal.h"

#include <cstdint>

namespace lidlark::grading {

/// How thick a flat exercise band is, in the trade's words. Colours are no standard: makers differ.
enum class BandGrade : std::uint8_t { ExtraThin, Thin, Medium, Heavy };
inline constexpr EnumNames<BandGrade, 4> bandGradeNames{{"extra-thin", "thin", "medium", "heavy"}};

/// A band drawn out from its resting length.
struct Band {
    BandGrade grade = BandGrade::Thin;
    int strands = 1; ///< Side by side: 2 for a band bent in half.
    double restMm = 1000;
    double drawnMm = 1000;
};

inline constexpr Span restSpanMm{100, 2000};
/// A child's band is never drawn to more than twice its length. Source: safety.md RB-02.
inline constexpr double mostStretch = 2;

/// Pull of a stretched rubber strip over its resting cross section, as a share of its stiffness.
///
///     pull = (1/L - 1/L^2) exp(A (L - 1/L)),   A = 0.38
///
/// @param stretch L = drawn / resting length, 1 or more.
/// Source: the equation of Martin, Roth and Stiehler (1956) in L. A. Wood, "Uniaxial extension and
/// compression in stress-strain relations of rubber", Journal of Research of the National Bureau of
/// Standards 82 (1977) 57-63, abstract (read): A about 0.38 for pure gum of natural rubber and of
/// several synthetic rubbers. It is the curve of the first stretch: a band that has been worked
/// pulls a little less.
double stretchPull(double stretch);

/// How hard the band pulls. The scale is a maker's pull of one strand at twice its
/// length: 2.4, 3.0, 3.7 and 4.6 pounds (10.7, 13.3, 16.5, 20.5 N) from extra thin to heavy.
/// Source: the force table of the widest sold flat bands as repeated by shops (donsnotes.com,
/// medwest.ca, both read). M. C. Uchida et al., Journal of Physical Therapy Science 28 (2016)
/// 1266-1271 (abstract read) measured less than the maker says. Bands of another make, or free of
/// latex, may differ by a third.
/// @returns N; ErrorCode::Invalid, "drawn_mm: ...", for a band that hangs slack or is drawn to more
/// than twice its length.
Result<double> bandPull(const Band &band);

/// How many times as hard the same band pulls at @p drawnMm as at @p otherDrawnMm; the same for any
/// thickness. @returns a number above 0, or "than_drawn_mm: ..." where the other hangs slack.
Result<double> bandTimes(double restMm, double drawnMm, double otherDrawnMm);

} // namespace lidlark::grading
