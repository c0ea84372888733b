#include "core/measure/pose_program.h"

#include "core/measure/cut_basis.h"
#include "core/measure/test_cylinder.h"

#include <algorithm>
#include <numbers>

namespace lidlark::measure {

namespace {

constexpr double radiusMm = cylinderDiameterMm / 2;
/// Depth below the rim at the axis; the bottom falls one for one towards +x.
constexpr double middleDepthMm = (leastDepthMm + mostDepthMm) / 2;
constexpr Vector3 rim{0, 0, 1};
constexpr Vector3 slope{-std::numbers::sqrt2 / 2, 0, -std::numbers::sqrt2 / 2};
constexpr double slopeMm = middleDepthMm * std::numbers::sqrt2 / 2;

/// A curved rim that all but fills the bore touches it in ever more points: some hundreds are met.
constexpr int mostPivots = 400;
constexpr double exactEnoughMm = 1e-4;
constexpr double endless = 1e9;

/// The linear program of leastCut.
class PoseProgram
{
public:
    PoseProgram(const ConvexBody &body, const Turn &about, double scale, const TurnLimits &limits)
        : m_body(body), m_about(about), m_scale(scale), m_limits(limits)
    {
        const auto round = [this](double y) {
            constexpr double aslant = std::numbers::sqrt2 / 2;
            return touching(Wall::Round, {aslant, y * aslant, 0}, radiusMm);
        };
        m_basis.begin({touching(Wall::Rim, rim, 0), touching(Wall::Slope, slope, slopeMm), round(1),
                       round(-1)},
                      m_limits);
    }

    LeastCut solve(double enough)
    {
        double atMost = endless;
        for (int pivots = 0; pivots < mostPivots; ++pivots) {
            const Constraint worst = mostViolated();
            const double second = secondOrder(m_limits, m_basis.meanOf(&Constraint::contactMm),
                                              m_basis.meanOf(&Constraint::asideMm));
            // The bound rises from below; what is cut here and now bounds it from above.
            atMost = worst.isWorst ? m_basis.cut() + worst.excess : endless;
            if (m_basis.cut() > enough + second || atMost < std::min(enough, second) ||
                atMost - m_basis.cut() < exactEnoughMm || !m_basis.enter(worst))
                break;
        }
        return {m_basis.cut(),
                atMost,
                m_basis.meanOf(&Constraint::contactMm),
                m_basis.meanOf(&Constraint::asideMm),
                m_basis.meanOf(&Constraint::perScale),
                turn()};
    }

private:
    [[nodiscard]] Vector3 turn() const { return m_basis.turn(); }
    /// The point of the body, turned as it is now, that reaches furthest along @p normal; both in
    /// the body's frame.
    [[nodiscard]] Vector3 reaching(Vector3 normal) const
    {
        // To first order, (x + turn cross x) . normal = x . (normal + normal cross turn).
        return m_body.furthest(normal + cross(normal, turn()));
    }

    [[nodiscard]] Constraint touching(Wall wall, Vector3 normal, double wallMm) const
    {
        const Vector3 inBody = m_about.toBody(normal);
        const Vector3 point = reaching(inBody);
        const Vector3 moment = m_scale * cross(point, inBody);
        Constraint row;
        row.coefficients = {normal.x, normal.y, normal.z, moment.x, moment.y, moment.z, -1};
        row.perScale = dot(point, inBody);
        row.right = wallMm - m_scale * row.perScale;
        row.contactMm = m_scale * length(point);
        row.asideMm = m_scale * std::hypot(point.x, point.y);
        row.wall = wall;
        row.excess = m_basis.excessOf(row);
        return row;
    }

    /// Seen from above, the point furthest from the axis that climbing from @p normal leads to. The
    /// distance is convex over the body, so the point furthest along the last direction is never
    /// nearer than the last point.
    double climb(Vector3 &normal) const
    {
        constexpr int steps = 12;
        constexpr double still = 1e-6;
        double reached = -1;
        for (int step = 0; step < steps; ++step) {
            const Vector3 point = reaching(m_about.toBody(normal));
            const Vector3 moved = m_about.toWorld(point + cross(turn(), point));
            const double x = m_scale * moved.x + m_basis.shift().x;
            const double y = m_scale * moved.y + m_basis.shift().y;
            const double distance = std::hypot(x, y);
            if (distance <= reached + still || distance == 0)
                break;
            reached = distance;
            normal = {x / distance, y / distance, 0};
        }
        return reached;
    }

    /// Where the body comes nearest the round wall or cuts it most: the highest of the few peaks.
    [[nodiscard]] Constraint roundWall() const
    {
        constexpr int starts = 8;
        Vector3 best{1, 0, 0};
        double furthest = -1;
        for (int i = 0; i < starts; ++i) {
            const double angle = 2 * std::numbers::pi * i / starts + 0.1;
            Vector3 normal{std::cos(angle), std::sin(angle), 0};
            const double reached = climb(normal);
            if (reached > furthest) {
                furthest = reached;
                best = normal;
            }
        }
        return touching(Wall::Round, best, radiusMm);
    }

    /// The same, but only from where the wall was touched before: mostly it moved little.
    [[nodiscard]] Constraint roundWallNearby() const
    {
        Constraint worst;
        for (const Constraint &row : m_basis.rows()) {
            if (row.wall != Wall::Round)
                continue;
            Vector3 normal{row.coefficients[0], row.coefficients[1], 0};
            climb(normal);
            const Constraint near = touching(Wall::Round, normal, radiusMm);
            if (near.excess > worst.excess)
                worst = near;
        }
        return worst;
    }

    [[nodiscard]] Constraint mostViolated() const
    {
        // Limits first: a cut that is found beyond them bounds nothing from above.
        if (const std::optional<Constraint> beyond = m_basis.limitPassed(m_limits))
            return *beyond;
        Constraint worst = touching(Wall::Rim, rim, 0);
        const auto consider = [&worst](const Constraint &row) {
            if (row.excess > worst.excess)
                worst = row;
        };
        consider(touching(Wall::Slope, slope, slopeMm));
        consider(roundWallNearby());
        if (worst.excess < exactEnoughMm) {
            consider(roundWall());
            worst.isWorst = true;
        }
        return worst;
    }

    const ConvexBody &m_body;
    const Turn &m_about;
    double m_scale;
    TurnLimits m_limits;
    CutBasis m_basis;
};

} // namespace

double secondOrder(const TurnLimits &limits, double contactMm, double asideMm)
{
    return limits.tilt * limits.tilt / 2 * contactMm +
           limits.spin * (limits.spin / 2 + limits.tilt) * asideMm;
}

LeastCut leastCut(const ConvexBody &body, const Turn &about, double scale, const TurnLimits &limits,
                  double enough)
{
    return PoseProgram(body, about, scale, limits).solve(enough);
}

double scaleInPose(const ConvexBody &body, const Turn &about, double most, double least)
{
    // The cut is convex in the scale, so Newton's steps come down to the root from above.
    constexpr int steps = 30;
    double scale = most;
    for (int i = 0; i < steps; ++i) {
        const LeastCut cut = leastCut(body, about, scale, {}, endless);
        if (cut.mm < exactEnoughMm)
            // A ball of the cylinder's own radius lies inside it: shrinking towards that ball's
            // middle takes a body out of a wall that it cuts.
            return cut.atMostMm < radiusMm ? scale / (1 + std::max(0.0, cut.atMostMm) / radiusMm)
                                           : 0;
        const double next = scale - cut.mm / cut.perScale;
        if (next < least)
            return 0;
        scale = next;
    }
    return 0;
}

} // namespace lidlark::measure
