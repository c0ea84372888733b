#include "core/measure/test_cylinder.h"

#include "core/measure/pose_program.h"

#include <algorithm>
#include <numbers>
#include <vector>

namespace lidlark::measure {

namespace {

/// What the search leaves open, relative; the rest of the promised 0.1 % is for rounding.
constexpr double precision = 9.5e-4;
/// A pose that cuts less at the scale aimed at is nearly as good as the best can be.
constexpr double worthTryingMm = 0.005;
/// Some hundreds are usual. A phone must not be kept busy for ever by a solid nobody thought of.
constexpr std::size_t mostCells = 50000;

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

/// Parts the orientations into ever smaller cells and drops those in which, by forces that balance,
/// not even a body a little larger than the best so far could lie.
class PoseSearch
{
public:
    PoseSearch(const Solid &solid, double most) : m_body(solid), m_most(most)
    {
        for (const double tilt : {0.0, -0.125, -0.25}) {
            for (const double spin : {0.0, std::numbers::sqrt2 - 1, 1.0}) {
                if (spin == 0 || !m_body.isRound())
                    tryPose({0, tilt, spin});
            }
        }
    }

    double run()
    {
        beginWhole();
        std::size_t looked = 0;
        while (!m_open.empty() && m_best * (1 + precision) < m_most) {
            if (++looked > mostCells)
                return m_best *
                       (1 + precision); // what may still be open near the best, as if found
            const Open open = m_open.back();
            m_open.pop_back();
            look(open);
        }
        return m_best;
    }

private:
    struct Open {
        OrientationCell cell;
        Balance balance; ///< Of the cell that it is a part of.
    };

    /// Mirrored at the plane of the slope the cylinder stays as it is, and so does every body here:
    /// tilts to one side will do. Half a turn about an axis of its own changes no body here: a
    /// quarter turn of tilt and half a turn of spin reach everything. A round body needs no spin.
    void beginWhole()
    {
        constexpr double part = 0.25;
        for (const double x : {part, 3 * part}) {
            for (const double y : {-3 * part, -part, part, 3 * part}) {
                if (m_body.isRound()) {
                    m_open.push_back({{{x, y, 0}, part, 0}, {}});
                    continue;
                }
                for (const double spin : {-0.5, 0.5})
                    m_open.push_back({{{x, y, spin}, part, 0.5}, {}});
            }
        }
    }

    bool isKnownForbidden(const Open &open, double scale)
    {
        if (open.balance.forbids(open.cell, scale))
            return true;
        for (std::size_t i = 0; i < m_recent.size(); ++i) {
            if (m_recent[i].forbids(open.cell, scale)) {
                std::swap(m_recent[i], m_recent[i / 2]);
                return true;
            }
        }
        return false;
    }

    /// Drops a cell, or leaves its parts open.
    void look(const Open &open)
    {
        const OrientationCell &cell = open.cell;
        const double nearestX = std::max(0.0, std::abs(cell.middle.tiltX) - cell.tilt);
        const double nearestY = std::max(0.0, std::abs(cell.middle.tiltY) - cell.tilt);
        if (nearestX * nearestX + nearestY * nearestY > 1)
            return;
        const double scale = m_best * (1 + precision);
        if (isKnownForbidden(open, scale))
            return;
        const LeastCut cut = leastCut(m_body, cell, scale);
        if (cut.isForbidden) {
            m_recent[m_next++ % m_recent.size()] = cut.balance;
            return;
        }
        if (cut.atMostMm < worthTryingMm)
            tryPose(cut.at);
        const Balance::Blur blur = cut.balance.blur(cell, scale);
        if (blur.byTilt >= blur.bySpin)
            splitTilt(cell, cut.balance);
        else
            splitSpin(cell, cut.balance);
    }

    void splitTilt(const OrientationCell &cell, const Balance &balance)
    {
        const double half = cell.tilt / 2;
        const auto &[tiltX, tiltY, spin] = cell.middle;
        for (const double x : {-half, half}) {
            for (const double y : {-half, half})
                m_open.push_back({{{tiltX + x, tiltY + y, spin}, half, cell.spin}, balance});
        }
    }

    void splitSpin(const OrientationCell &cell, const Balance &balance)
    {
        const double half = cell.spin / 2;
        const auto &[tiltX, tiltY, spin] = cell.middle;
        for (const double by : {-half, half})
            m_open.push_back({{{tiltX, tiltY, spin + by}, cell.tilt, half}, balance});
    }

    void tryPose(const Orientation &lying)
    {
        m_best = std::max(m_best, scaleInPose(m_body, lying, m_best));
    }

    ConvexBody m_body;
    double m_most; ///< No pose has room for more.
    double m_best = 0;
    std::vector<Open> m_open;
    std::array<Balance, 8> m_recent{};
    std::size_t m_next = 0;
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
