#include "core/grading/band.h"

#include <array>
#include <cmath>
#include <optional>

namespace lidlark::grading {

namespace {

constexpr double newtonsInPound = 4.4482216; // Pound-force; NIST SP 811 (2008), appendix B.
constexpr std::array<double, 4> poundsAtTwice{2.4, 3.0, 3.7, 4.6};
constexpr double stiffening = 0.38;

/// Why a band cannot be drawn so.
std::optional<Error> problemWith(double rest, double drawn, std::string_view drawnField)
{
    if (!restSpanMm.has(rest))
        return refusal("rest_mm", "must be 100 to 2000 mm");
    if (!(drawn >= rest))
        return refusal(drawnField, "is shorter than the band at rest: it hangs slack");
    if (!(drawn <= mostStretch * rest))
        return refusal(drawnField, "a band is never drawn to more than twice its length");
    return std::nullopt;
}

} // namespace

double stretchPull(double stretch)
{
    return (1 / stretch - 1 / (stretch * stretch)) * std::exp(stiffening * (stretch - 1 / stretch));
}

Result<double> bandPull(const Band &band)
{
    if (const auto problem = problemWith(band.restMm, band.drawnMm, "drawn_mm"))
        return *problem;
    if (band.strands < 1 || band.strands > 2)
        return refusal("strands", "must be 1, or 2 for a band bent in half");
    const double atTwice = newtonsInPound * poundsAtTwice.at(static_cast<std::size_t>(band.grade));
    return band.strands * atTwice * stretchPull(band.drawnMm / band.restMm) / stretchPull(2);
}

Result<double> bandTimes(double restMm, double drawnMm, double otherDrawnMm)
{
    if (const auto problem = problemWith(restMm, drawnMm, "drawn_mm"))
        return *problem;
    if (const auto problem = problemWith(restMm, otherDrawnMm, "than_drawn_mm"))
        return *problem;
    const double other = stretchPull(otherDrawnMm / restMm);
    if (!(other > 0))
        return refusal("than_drawn_mm", "pulls not at all there: nothing to compare with");
    return stretchPull(drawnMm / restMm) / other;
}

} // namespace lidlark::grading
