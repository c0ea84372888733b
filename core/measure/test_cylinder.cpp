#include "core/measure/test_cylinder.h"

#include "core/measure/pose_program.h"

#include <algorithm>
#include <numbers>
#include <vector>

namespace lidlark::measure {

namespace {

/// What the search leaves open, relative; the rest of the promised 0.1 % is for rounding.
constexpr double precision = 8e-4;
/// A pose that cuts less at the scale aimed at is nearly as good as the best can be.
constexpr double worthTryingMm = 0.005;
/// Some hundreds are usual. A phone must not be kept busy for ever by a solid nobody thought of.
constexpr std::size_t mostCells = 50000;
constexpr double quarterTurn = std::numbers::pi / 2;

/// The smallest circle that a shadow of the body can have, mm across: no pose needs less width.
/// Box: the mean square of its four space diagonals' shadows is the sum of its edges squared
/// without what lies along the light, so one of them is at least as long as the smallest face's
/// diagonal. Ellipsoid: a shadow is an ellipse at least as long as the middle axis. Cylinder: the
/// shadow of a disc is as wide as the disc.
double leastShadow(const Solid &solid)
{
    std::array<double, 3> sizes = solid.sizes();
    if (solid.shape() == Shape::Cylinder)
        return sizes[0];
    std::ranges::sort(sizes);
    return solid.shape() == Shape::Box ? std::hypot(sizes[0], sizes[1]) : sizes[1];
}

/// How deep the axis must be for the body, standing upright on the middle of the bottom with its
/// short side towards the shallow wall, mm.
double depthUpright(const Solid &solid)
{
    std::array<double, 3> sizes = solid.sizes();
    if (solid.shape() == Shape::Cylinder)
        return sizes[2] + sizes[0] / 2;
    std::ranges::sort(sizes);
    return solid.shape() == Shape::Box ? sizes[2] + sizes[0] / 2
                                       : (sizes[2] + std::hypot(sizes[0], sizes[2])) / 2;
}

/// Orientations around one. A body is first spun about its z axis, then tilted: its tilt vector
/// (about a level line) differs by at most `tilt` along x and along y, its spin by at most `spin`.
struct Cell {
    double tiltX;
    double tiltY;
    double spinAngle;
    double tilt;
    double spin;

    [[nodiscard]] Turn middle() const
    {
        return turned(turned({}, {0, 0, spinAngle}), {tiltX, tiltY, 0});
    }
    /// Two tilts are no further apart than their tilt vectors.
    [[nodiscard]] TurnLimits limits() const { return {std::numbers::sqrt2 * tilt, spin}; }
};

/// Parts the orientations into ever smaller cells and drops those in which, by forces and moments
/// that balance, not even a body a little larger than the best so far could lie.
class PoseSearch
{
public:
    PoseSearch(const Solid &solid, double most) : m_body(solid), m_most(most)
    {
        for (const double tilt : {0.0, 0.25, 0.5}) {
            for (const double spin : {0.0, quarterTurn / 2, quarterTurn}) {
                if (spin == 0 || !m_body.isRound())
                    tryPose(Cell{0, -tilt, spin, 0, 0}.middle());
            }
        }
    }

    double run()
    {
        std::vector<Cell> cells = whole();
        while (!cells.empty() && m_best * (1 + precision) < m_most) {
            if (cells.size() > mostCells)
                return m_best *
                       (1 + precision); // what may still be open near the best, as if found
            std::vector<Cell> next;
            for (const Cell &cell : cells)
                look(cell, next);
            cells = std::move(next);
        }
        return m_best;
    }

private:
    /// Mirrored at the plane of the slope the cylinder stays as it is, and so does every body here:
    /// tilts to one side will do. Half a turn about an axis of its own changes no body here: a
    /// quarter turn of tilt and half a turn of spin reach everything. A round body needs no spin.
    [[nodiscard]] std::vector<Cell> whole() const
    {
        constexpr double part = quarterTurn / 4;
        std::vector<Cell> cells;
        for (const double x : {part, 3 * part}) {
            for (const double y : {-3 * part, -part, part, 3 * part}) {
                if (m_body.isRound()) {
                    cells.push_back({x, y, 0, part, 0});
                    continue;
                }
                for (const double spin : {-quarterTurn / 2, quarterTurn / 2})
                    cells.push_back({x, y, spin, part, quarterTurn / 2});
            }
        }
        return cells;
    }

    /// Drops @p cell, or puts its parts into @p next.
    void look(const Cell &cell, std::vector<Cell> &next)
    {
        const double nearestX = std::max(0.0, std::abs(cell.tiltX) - cell.tilt);
        const double nearestY = std::max(0.0, std::abs(cell.tiltY) - cell.tilt);
        if (std::hypot(nearestX, nearestY) > quarterTurn)
            return;
        const TurnLimits limits = cell.limits();
        const Turn about = cell.middle();
        const LeastCut cut = leastCut(m_body, about, m_best * (1 + precision), limits, 0);
        if (cut.mm > secondOrder(limits, cut.meanContactMm, cut.meanAsideMm))
            return;
        if (cut.atMostMm < worthTryingMm)
            tryPose(turned(about, about.toWorld(cut.turn)));
        const double byTilt = limits.tilt * limits.tilt * cut.meanContactMm;
        const double bySpin = limits.spin * limits.spin * cut.meanAsideMm;
        byTilt >= bySpin ? splitTilt(cell, next) : splitSpin(cell, next);
    }

    static void splitTilt(const Cell &cell, std::vector<Cell> &next)
    {
        const double half = cell.tilt / 2;
        for (const double x : {-half, half}) {
            for (const double y : {-half, half})
                next.push_back({cell.tiltX + x, cell.tiltY + y, cell.spinAngle, half, cell.spin});
        }
    }

    static void splitSpin(const Cell &cell, std::vector<Cell> &next)
    {
        const double half = cell.spin / 2;
        for (const double spin : {-half, half})
            next.push_back({cell.tiltX, cell.tiltY, cell.spinAngle + spin, cell.tilt, half});
    }

    void tryPose(const Turn &turn)
    {
        m_best = std::max(m_best, scaleInPose(m_body, turn, m_most, m_best));
    }

    ConvexBody m_body;
    double m_most; ///< No pose has room for more.
    double m_best = 0;
};

} // namespace

double largestScaleInTestCylinder(const Solid &solid)
{
    const double byWidth = cylinderDiameterMm / leastShadow(solid);
    if (byWidth * depthUpright(solid) <= (leastDepthMm + mostDepthMm) / 2)
        return byWidth;
    return PoseSearch(solid, byWidth).run();
}

bool fitsTestCylinder(const Solid &solid, double scale)
{
    const double largest = std::ranges::max(solid.sizes());
    return scale >= 1 || (1 - scale) * largest <= doubtMm;
}

std::optional<bool> isSmallBall(const Solid &solid)
{
    if (solid.shape() != Shape::Sphere && solid.shape() != Shape::Ellipsoid)
        return std::nullopt;
    std::array<double, 3> sizes = solid.sizes();
    std::ranges::sort(sizes);
    return sizes[1] <= smallBallHoleMm; // falls through the way that is easiest
}

} // namespace lidlark::measure
