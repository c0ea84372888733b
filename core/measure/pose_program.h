#pragma once

#include "core/measure/balance.h"
#include "core/measure/convex_body.h"

namespace lidlark::measure {

/// How deep the walls are cut at the least when a body is pushed about near one orientation.
struct LeastCut {
    double mm = 0;       ///< At least this much, to first order; below zero: there is room.
    double atMostMm = 0; ///< At most this much, to first order, at this shift and orientation.
    Orientation at;      ///< Where that is.
    Balance balance;     ///< The pressures that show the least cut, good beyond the first order.
    bool isForbidden = false; ///< They show that the body lies nowhere in the cell.
};

/// Pushes @p body, at @p scale, to where it cuts the walls of the test cylinder least, while it may
/// shift freely and turn within @p cell. Stops early once the balance forbids the cell, or there is
/// seen to be room.
///
/// To first order in the turn this is a linear program in seven unknowns (shift, turn, cut): each
/// ball inside the body (x, r) and each wall with outward normal u say
///     scale (r + u x + turn (x cross u)) + shift u - wall(u) <= cut.
/// It is solved by the dual simplex method with constraints made as they are violated, so at every
/// moment its multipliers are pressures of the walls whose forces and moments balance. Leaving a
/// wall out only lowers the cut.
LeastCut leastCut(const ConvexBody &body, const OrientationCell &cell, double scale);

/// The largest scale at which @p body lies wholly inside as @p lying says. The same program without
/// a turn, and with the scale to be made large in the cut's place.
/// @param least below this the answer is not of interest, and may be 0.
double scaleInPose(const ConvexBody &body, const Orientation &lying, double least);

} // namespace lidlark::measure
