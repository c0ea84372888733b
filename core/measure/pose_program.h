#pragma once

#include "core/measure/convex_body.h"

namespace lidlark::measure {

/// How far a body may be turned on from an orientation.
struct TurnLimits {
    double tilt = 0; ///< Radians, about any line across its own z axis.
    double spin = 0; ///< Radians more, about that axis.
};

/// How deep the walls are cut at the least when a body is pushed about near one orientation.
struct LeastCut {
    double mm = 0;            ///< At least this much, to first order; below zero: there is room.
    double atMostMm = 0;      ///< At most this much, to first order, at this shift and turn.
    double meanContactMm = 0; ///< How far from the middle, weighted, the contacts lie.
    double meanAsideMm = 0;   ///< How far from the z axis.
    double perScale = 0;      ///< How fast the cut grows with the scale, mm.
    Vector3 turn;             ///< How the body turns for it, radians, in its own frame.
};

/// By how much, at the most and in the mean of contacts so far out and aside, a turn within the
/// limits strays from its first order, mm: a spin by half its square times the distance aside, a
/// tilt by half its square times the distance from the middle, both together by their product times
/// the distance aside.
double secondOrder(const TurnLimits &limits, double contactMm, double asideMm);

/// Pushes @p body, at @p scale and turned by @p about, to where it cuts the walls of the test
/// cylinder least, while it may shift freely and turn on within @p limits.
///
/// To first order in the turn this is a linear program in seven unknowns (shift, turn, cut): each
/// touching point x of the body and each wall with outward normal u say
///     scale (u x + turn (x cross u)) + shift u - wall(u) <= cut.
/// It is solved by the dual simplex method with constraints made as they are violated, so at every
/// moment the cut so far is a lower bound: its multipliers are pressures of the walls whose forces
/// and moments balance. Leaving a wall out only lowers it. The second order is the caller's.
///
/// @param enough the search stops once the bound is above this, mm, and the second order.
LeastCut leastCut(const ConvexBody &body, const Turn &about, double scale, const TurnLimits &limits,
                  double enough);

/// The largest scale at which @p body turned by @p about lies wholly inside.
/// @param most a scale at which it does not, or just does.
/// @param least below this the answer is not of interest, and may be 0.
double scaleInPose(const ConvexBody &body, const Turn &about, double most, double least);

} // namespace lidlark::measure
