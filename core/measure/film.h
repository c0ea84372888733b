#pragma once

#include <algorithm>

namespace lidlark::measure {

/// A plastic bag or a sheet of plastic film, in mm.
struct Film {
    double meanThicknessMm = 0;
    double openingPerimeterMm = 0; ///< Of a bag; 0: a sheet.
    double longMm = 0;             ///< A sheet's edges; not asked of a bag.
    double shortMm = 0;
    double holesPercent = 0; ///< Least share of holes in any 30 mm x 30 mm of it.
    bool drawstring = false;
    bool operator==(const Film &) const = default;
};

/// Source of the four limits: EN 71-1 film clauses and annex A.5 (read in unofficial copies of the
/// 2009 text; safety.md PB-01): film of a bag whose opening is wider than 380 mm round, or of a
/// sheet larger than 100 mm x 100 mm, is at least 0.038 mm thick on average, or has holes over at
/// least 1 % of any 30 mm x 30 mm; no drawstring.
inline constexpr double leastFilmThicknessMm = 0.038;
inline constexpr double mostOpeningPerimeterMm = 380;
inline constexpr double mostSheetEdgeMm = 100;
inline constexpr double leastHolesPercent = 1;

/// Large enough to lie over a face.
constexpr bool coversAFace(const Film &film)
{
    if (film.openingPerimeterMm > 0)
        return film.openingPerimeterMm > mostOpeningPerimeterMm;
    return std::min(film.longMm, film.shortMm) > mostSheetEdgeMm;
}

/// Whether film may cling to a face and shut off the breath, or be pulled tight by a string.
constexpr bool maySmother(const Film &film)
{
    const bool holed = film.holesPercent >= leastHolesPercent;
    const bool tooThin = film.meanThicknessMm < leastFilmThicknessMm && !holed;
    return film.drawstring || (coversAFace(film) && tooThin);
}

} // namespace lidlark::measure
